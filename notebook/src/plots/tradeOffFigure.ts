import { limitsBroken, type Setting, settingsOf, type TradeOff } from 'beamkeep/planning';
import type { Data, Layout, Shape } from 'plotly.js-dist-min';
import { counted, figure } from '../words/numbers.js';
import { ground, namesAbove, ruled } from './ground.js';
import type { Palette } from './palette.js';
import { type Figure, plain } from './plotly.js';
import { margins } from './timeAxis.js';

/*
 * Two views of the same settings. By their costs: nuisance across, time to alarm up, the frontier joined. By what is
 * set: threshold across, delay up, with lines of equal time and the limits of standards as lettered lines. In both a
 * filled dot is on the frontier, a ring is not, a cross lies outside a limit; the large plus is the setting of the site,
 * the diamond the one that is tried.
 */

export const costHeight = 380;
export const settingHeight = 380;

/** A threshold [%] and a delay [s]. */
export interface Pair {
  readonly threshold: number;
  readonly delay: number;
}

/** Letters of the limits, in their order: they stand on the lines and in the list below. */
export const limitLetter = (row: number): string => String.fromCharCode(97 + row);

const isAt =
  ({ threshold, delay }: Pair) =>
  (setting: Pair): boolean =>
    setting.threshold === threshold && setting.delay === delay;

/** Where a yearly count stands: zero has a place, and each power of ten the same room. */
const stretched = (perYear: number): number => Math.log10(1 + 10 * perYear);

const yearTicks = [0, 0.1, 1, 10, 100, 1000, 10_000, 100_000];

const inWords = ({ threshold, delay, seconds, early, late, perYear }: Setting): string =>
  `${figure(threshold)} %, ${figure(delay)} s: alarm after ${figure(seconds)} s (${figure(early)} to ${
    Number.isFinite(late) ? `${figure(late)} s` : 'not while watched'
  }), ${figure(perYear)} a year`;

/** Time to alarm against nuisance: every setting, the frontier with its band, the setting of the site, the one tried. */
export function costFigure(tradeOff: TradeOff, tried: Pair, width: number, colours: Palette): Figure {
  const settings = settingsOf(tradeOff);
  const slowest = Math.max(1, ...settings.map(({ seconds }) => seconds));
  const most = Math.max(1, ...settings.map(({ perYear }) => perYear));
  const outside = settings.filter((each) => limitsBroken(each, tradeOff.limits).length > 0);
  const within = settings.filter((each) => !outside.includes(each));
  const { frontier } = tradeOff;
  const x = (of: readonly Setting[]): number[] => of.map(({ perYear }) => stretched(perYear));
  const y = (of: readonly Setting[]): number[] => of.map(({ seconds }) => seconds);
  const marks = (of: readonly Setting[], name: string, marker: object, more: object = {}): Data => ({
    type: 'scatter',
    mode: 'markers',
    x: x(of),
    y: y(of),
    text: of.map((each) => plain(inWords(each))),
    hovertemplate: '%{text}<extra></extra>',
    name,
    marker,
    ...more,
  });
  const data: Data[] = [
    marks(within, 'other settings', { symbol: 'circle-open', size: 5, color: colours.band }),
    marks(outside, 'outside a limit', { symbol: 'x-thin', size: 5, line: { color: colours.band, width: 1 } }),
    marks(
      frontier,
      'on the frontier, with its band',
      { symbol: 'circle', size: 8, color: colours.ink },
      {
        mode: 'lines+markers',
        line: { color: colours.ink, width: 1.3 },
        error_y: {
          type: 'data',
          symmetric: false,
          array: frontier.map(({ seconds, late }) => Math.min(late, 2 * slowest) - seconds),
          arrayminus: frontier.map(({ seconds, early }) => seconds - early),
          color: colours.ink,
          thickness: 1.2,
          width: 3,
        },
      },
    ),
    ...chosen(settings, tradeOff, tried, colours, (one) => [stretched(one.perYear), one.seconds]),
  ];
  return {
    data,
    layout: {
      ...frame(width, costHeight, colours),
      xaxis: {
        ...axis(colours, 'nuisance alarms a year', true),
        range: [-0.06 * stretched(most), 1.06 * stretched(most)],
        tickvals: yearTicks.map(stretched),
        ticktext: yearTicks.map((tick) => (tick < 1 ? figure(tick) : counted(tick))),
      },
      yaxis: { ...axis(colours, 'time to alarm of the slowest fire [s]', width >= 520), range: [0, 1.08 * slowest] },
    },
  };
}

/** What can be set: threshold against delay, lines of equal time, limits of standards by letters. */
export function settingFigure(tradeOff: TradeOff, tried: Pair, width: number, colours: Palette): Figure {
  const { thresholds, delays, fires, frontier, limits } = tradeOff;
  const settings = thresholds.flatMap((threshold) => delays.map((delay) => ({ threshold, delay })));
  const onFrontier = (one: Pair): boolean => frontier.some(isAt(one));
  const outside = settings.filter((each) => limitsBroken(each, limits).length > 0);
  const within = settings.filter((each) => !outside.includes(each) && !onFrontier(each));
  const last = delays.at(-1) ?? 1;
  const marks = (of: readonly Pair[], name: string, marker: object): Data => ({
    type: 'scatter',
    mode: 'markers',
    x: of.map(({ threshold }) => threshold),
    y: of.map(({ delay }) => delay),
    text: of.map(({ threshold, delay }) => `${figure(threshold)} %, ${figure(delay)} s`),
    hovertemplate: '%{text}<extra></extra>',
    name,
    marker,
  });
  const shapes: Partial<Shape>[] = limits.flatMap(({ of, side, value }) => {
    const along = of === 'threshold';
    const [from, to] = side === 'least' ? [0, value] : [value, along ? 100 : 1.06 * last];
    const area = along ? { x0: from, x1: to, y0: 0, y1: 1 } : { x0: 0, x1: 1, y0: from, y1: to };
    const line = along ? { x0: value, x1: value, y0: 0, y1: 1 } : { x0: 0, x1: 1, y0: value, y1: value };
    const refs = along ? ({ xref: 'x', yref: 'paper' } as const) : ({ xref: 'paper', yref: 'y' } as const);
    return [
      {
        type: 'rect' as const,
        layer: 'below' as const,
        ...refs,
        ...area,
        fillcolor: colours.hatch,
        opacity: 0.22,
        line: { width: 0 },
      },
      { type: 'line' as const, ...refs, ...line, line: { color: colours.warm, width: 1.3, dash: 'dash' as const } },
    ];
  });
  const data: Data[] = [
    {
      type: 'contour',
      x: [...thresholds],
      y: [...delays],
      z: delays.map((_, column) =>
        thresholds.map((_threshold, row) =>
          Math.max(...fires.map(({ cells }) => cells[row]?.[column]?.seconds.value ?? Number.NaN)),
        ),
      ),
      contours: { coloring: 'none', showlabels: true, labelfont: { size: 11, color: colours.soft } },
      ncontours: 9,
      line: { color: colours.band, width: 1 },
      showscale: false,
      showlegend: false,
      hoverinfo: 'skip',
      connectgaps: false,
    } as Data,
    marks(within, 'other settings', { symbol: 'circle-open', size: 4, color: colours.band }),
    marks(outside, 'outside a limit', { symbol: 'x-thin', size: 5, line: { color: colours.band, width: 1 } }),
    marks(frontier, 'on the frontier', { symbol: 'circle', size: 8, color: colours.ink }),
    ...chosen(settings, tradeOff, tried, colours, (one) => [one.threshold, one.delay]),
  ];
  return {
    data,
    layout: {
      ...frame(width, settingHeight, colours),
      xaxis: { ...axis(colours, 'threshold [%]', true), range: [0, 100] },
      yaxis: { ...axis(colours, 'delay [s]', width >= 520), range: [-0.04 * last, 1.06 * last] },
      shapes,
      annotations: limits.map(({ of, value }, row) => ({
        ...(of === 'threshold'
          ? { x: value, y: 1, xref: 'x' as const, yref: 'paper' as const, yanchor: 'bottom' as const }
          : { x: 1, y: value, xref: 'paper' as const, yref: 'y' as const, xanchor: 'left' as const }),
        text: limitLetter(row),
        showarrow: false,
        font: { size: 13, color: colours.warm },
      })) as NonNullable<Layout['annotations']>,
    },
  };
}

/** The setting of the site, and the one that is tried where it is another. */
function chosen<S extends Pair>(
  settings: readonly S[],
  { current }: TradeOff,
  tried: Pair,
  colours: Palette,
  place: (setting: S) => readonly [x: number, y: number],
): Data[] {
  const now = settings.find(isAt(current));
  const other = isAt(current)(tried) ? undefined : settings.find(isAt(tried));
  const mark = (setting: S | undefined, name: string, marker: object): Data[] =>
    setting === undefined
      ? []
      : [
          {
            type: 'scatter',
            mode: 'text+markers',
            x: [place(setting)[0]],
            y: [place(setting)[1]],
            text: [name],
            textposition: 'top right',
            textfont: { size: 13, color: colours.warm },
            hoverinfo: 'skip',
            name: `${name}: ${figure(setting.threshold)} %, ${figure(setting.delay)} s`,
            marker,
          } as Data,
        ];
  return [
    ...mark(now, 'now', { symbol: 'cross-thin', size: 16, line: { color: colours.warm, width: 3 } }),
    ...mark(other, 'tried', { symbol: 'diamond-open', size: 13, color: colours.warm, line: { width: 2 } }),
  ];
}

const frame = (width: number, height: number, colours: Palette): Partial<Layout> => {
  const { l, r } = margins(width);
  return {
    width,
    height,
    margin: { l, r: r + 10, t: width < 520 ? 96 : 48, b: 44 },
    ...ground(colours),
    hovermode: 'closest',
    ...namesAbove(colours, 1.06),
  };
};

const axis = (colours: Palette, title: string, titled: boolean): Partial<Layout['xaxis']> => ({
  ...ruled(colours),
  ticks: 'outside',
  ticklen: 4,
  title: { text: titled ? title : '', font: { size: 11 }, standoff: 6 },
});
