import { severities } from 'beamkeep/diagnosis';
import type { Data, Layout, Shape } from 'plotly.js-dist-min';
import type { EventTold, Line, NumberedFinding, Signalled, Window } from '../bench/reading.js';
import { scaledThreshold } from '../bench/scaled.js';
import type { SiteZone } from '../bench/siteZone.js';
import type { Scale } from '../sheet/sheet.js';
import { causeOnBar } from '../words/causes.js';
import { ground } from './ground.js';
import type { Palette } from './palette.js';
import { type Figure, plain } from './plotly.js';
import type { Strip } from './strips.js';

/*
 * One beam's lane: above, its findings as named bars; below, its line with the thresholds. Severity is told by the
 * filling of a bar (act: solid, watch: hatched, note: open) and by its word in the list, not by a colour. A finding
 * of short extent is also shaded behind the line; the chosen one always is.
 */

/** Height of a row of bars [px]. */
export const barHeight = 20;
/** Height of the line's part of a lane [px]. */
export const lineHeight = 148;
/** Height of the time labels under the lowest lane [px]. */
export const axisHeight = 44;

/** Room left and right of the line [px]: the same in every lane, so that the lanes stand in line. */
export const margins = (width: number): { l: number; r: number } => ({
  l: width < 520 ? 40 : 56,
  r: width < 520 ? 8 : 14,
});

/** What a lane shows. */
export interface Lane {
  readonly line: Line;
  readonly scale: Scale;
  readonly reach: 'thresholds' | 'data';
  readonly alarmThreshold: number;
  readonly faultThreshold: number;
  readonly strips: readonly Strip[];
  /** Rows of bars: those of the strips, and one more where there is something that was signalled. */
  readonly rows: number;
  readonly chosen: number | null;
  /** What the equipment would have signalled: a row of its own under the findings; null where it is not shown. */
  readonly signalled: readonly Signalled[] | null;
  /** Entries of the panel's list that concern this beam. */
  readonly events: readonly EventTold[];
  readonly window: Window;
  readonly zone: SiteZone;
  /** Whether the time labels stand under this lane. */
  readonly lowest: boolean;
  /** Whether a value holds until the next one. */
  readonly steps: boolean;
}

const units: Readonly<Record<Scale, string>> = {
  obscuration: 'obscuration [%]',
  level: 'level [%]',
  loss: 'loss [dB]',
};

/** Height of a lane [px]. */
export const laneHeight = (rows: number, lowest: boolean): number =>
  rows * barHeight + (rows > 0 ? 6 : 0) + lineHeight + (lowest ? axisHeight : 10);

/** The picture of a lane. */
export function laneFigure(lane: Lane, width: number, colours: Palette): Figure {
  const { line, window, zone, scale } = lane;
  const { rows } = lane;
  const height = laneHeight(rows, lane.lowest);
  const bottom = lane.lowest ? axisHeight : 10;
  const inner = height - bottom;
  const share = (rows * barHeight) / inner;
  const range = valueRange(lane);
  const { l, r } = margins(width);
  const shapes: Partial<Shape>[] = [...shading(lane, colours), ...thresholds(lane, range, colours)];
  const layout: Partial<Layout> = {
    width,
    height,
    margin: { l, r, t: 0, b: bottom },
    ...ground(colours),
    showlegend: false,
    dragmode: 'zoom',
    hovermode: 'closest',
    hoverlabel: {
      bgcolor: colours.panel,
      bordercolor: colours.soft,
      font: { color: colours.ink, size: 13 },
      align: 'left',
    },
    xaxis: {
      ...timeAxis(window, zone, colours, lane.lowest, width),
      anchor: 'y',
      domain: [0, 1],
    },
    yaxis: {
      domain: [0, rows > 0 ? 1 - share - 6 / inner : 1],
      range: [...range],
      fixedrange: true,
      gridcolor: colours.rule,
      zeroline: false,
      nticks: 5,
      ticks: 'outside',
      ticklen: 3,
      tickcolor: colours.rule,
      linecolor: colours.soft,
      showline: true,
      title: { text: width < 520 ? '' : units[scale], font: { size: 11 }, standoff: 4 },
      hoverformat: '.2f',
    },
    yaxis2: {
      domain: [rows > 0 ? 1 - share : 1, 1],
      range: [Math.max(1, rows) - 0.5, -0.5],
      fixedrange: true,
      visible: false,
      anchor: 'x',
    },
    shapes,
    annotations: thresholdNames(lane, range, colours),
    bargap: 0,
    barmode: 'overlay',
  };
  return {
    data: [
      lineTrace(line, lane.steps, colours),
      ...bars(lane, width - l - r, colours),
      ...states(lane, width - l - r, colours),
      ...panel(lane, range, colours),
    ],
    layout,
  };
}

/** Dates as day and month, whatever the length of the stretch. */
export const tickFormats: NonNullable<NonNullable<Layout['xaxis']>['tickformatstops']> = [
  { dtickrange: [null, 1000], value: '%H:%M:%S.%L\n%-d %b' },
  { dtickrange: [1000, 60_000], value: '%H:%M:%S\n%-d %b %Y' },
  { dtickrange: [60_000, 86_400_000], value: '%H:%M\n%-d %b %Y' },
  { dtickrange: [86_400_000, 'M1'], value: '%-d %b\n%Y' },
  { dtickrange: ['M1', 'M12'], value: '%b\n%Y' },
  { dtickrange: ['M12', null], value: '%Y' },
];

/** The time axis, the same in every plot of a log. */
export function timeAxis(
  window: Window,
  zone: SiteZone,
  colours: Palette,
  named: boolean,
  pixels: number,
): NonNullable<Layout['xaxis']> {
  const change = zone.changes(window.from, window.to) ? '; the clocks change in this stretch' : '';
  return {
    type: 'date',
    range: [zone.wall(window.from), zone.wall(window.to)],
    gridcolor: colours.rule,
    linecolor: colours.soft,
    showline: true,
    ticks: 'outside',
    ticklen: named ? 4 : 0,
    tickcolor: colours.soft,
    showticklabels: named,
    nticks: pixels < 520 ? 4 : 9,
    tickformatstops: tickFormats,
    title: { text: named ? plain(`time in ${zone.name}${change}`) : '', font: { size: 11 }, standoff: 6 },
    hoverformat: '%d %b %Y, %H:%M:%S',
  } as NonNullable<Layout['xaxis']>;
}

function lineTrace({ clock, value }: Line, steps: boolean, colours: Palette): Data {
  return {
    type: 'scatter',
    mode: 'lines',
    x: [...clock],
    y: value,
    line: { color: colours.ink, width: 1.1, shape: steps ? 'hv' : 'linear', simplify: true },
    connectgaps: false,
    hoverinfo: 'skip',
    name: 'line',
  };
}

/** Extent of the axis: what is in sight, and the thresholds where asked for. */
function valueRange({ line, scale, reach, alarmThreshold, faultThreshold }: Lane): [number, number] {
  const clean = scaledThreshold(0, scale);
  let low = clean;
  let high = clean;
  for (const value of line.value) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  if (reach === 'thresholds')
    for (const threshold of [alarmThreshold, faultThreshold]) {
      low = Math.min(low, scaledThreshold(threshold, scale));
      high = Math.max(high, scaledThreshold(threshold, scale));
    }
  const least = scale === 'loss' ? 0.25 : 4;
  const pad = Math.max(high - low, least) * 0.07;
  if (high - low < least) return scale === 'level' ? [high - least, high + pad] : [low - pad, low + least];
  return [low - pad, high + pad];
}

/** Bars of the findings that are in sight, cut to the window. */
function bars({ strips, window, zone, chosen }: Lane, pixels: number, colours: Palette): Data[] {
  const perPixel = (window.to - window.from) / pixels;
  const cut = strips.map(({ finding, row, named }): Bar => {
    const start = Math.max(finding.start, window.from);
    const long = Math.max(Math.min(finding.end, window.to) - start, 5 * perPixel);
    const name = nameOnBar(finding);
    if (!named) return { finding, row, start, long, name: '', inside: true };
    const inside = long / perPixel > name.length * 6.6 + 8;
    return {
      finding,
      row,
      start,
      long,
      name: inside ? name : outsideName(name, start, long, perPixel, window),
      inside,
    };
  });
  const handles = cut.filter(({ name, inside }) => name !== '' && !inside).map((bar) => handle(bar, perPixel));
  const drawn = severities
    .map((severity) => cut.filter(({ finding }) => finding.severity === severity))
    .filter((same) => same.length > 0)
    .map((same) => barsAlike(same, zone, chosen, colours));
  return handles.length > 0 ? [unseenBars(handles, zone), ...drawn] : drawn;
}

/** What the equipment would have signalled, as bars of their own in the lowest row. */
function states(lane: Lane, pixels: number, colours: Palette): Data[] {
  const { signalled, window, zone } = lane;
  const perPixel = (window.to - window.from) / pixels;
  const last = Math.max(...(signalled ?? []).map(({ end }) => end));
  const inSight = (signalled ?? []).filter(({ start, end }) => start <= window.to && end >= window.from);
  if (inSight.length === 0) return [];
  const cut = inSight.map(({ state, start, end }) => {
    const from = Math.max(start, window.from);
    const long = Math.max(Math.min(end, window.to) - from, 3 * perPixel);
    const fits = (name: string): boolean => long / perPixel > 6.4 * name.length + 8;
    return { state, from, long, name: stateNames(state, end >= last).find(fits) ?? '' };
  });
  return [
    {
      type: 'bar',
      orientation: 'h',
      base: cut.map(({ from }) => zone.wall(from)),
      x: cut.map(({ long }) => long),
      y: cut.map(() => lane.rows - 1),
      width: 0.62,
      xaxis: 'x',
      yaxis: 'y2',
      text: cut.map(({ name }) => name),
      textposition: 'inside',
      insidetextanchor: 'start',
      constraintext: 'none',
      textangle: 0,
      insidetextfont: { size: 11, color: colours.paper },
      marker: { color: cut.map(({ state }) => (state === 'fire' ? colours.warm : colours.soft)), line: { width: 0 } },
      hovertext: cut.map(({ state }) => `the equipment would have signalled ${state}`),
      hoverinfo: 'text',
      name: 'signalled',
    } as unknown as Data,
  ];
}

/** Entries of the panel's list as marks at the top of the line: each kind has a shape of its own. */
function panel({ events, window, zone }: Lane, range: readonly [number, number], colours: Palette): Data[] {
  const inSight = events.filter(({ at }) => at >= window.from && at <= window.to);
  if (inSight.length === 0) return [];
  return [
    {
      type: 'scatter',
      mode: 'markers',
      x: inSight.map(({ at }) => zone.wall(at)),
      y: inSight.map(() => range[1] - 0.05 * (range[1] - range[0])),
      marker: {
        symbol: inSight.map(({ what }) => shapes[what.toLowerCase()] ?? 'x-thin-open'),
        size: 8,
        color: colours.warm,
        line: { color: colours.warm, width: 1.3 },
      },
      hovertext: inSight.map(({ what, words }) => plain(`panel: ${what}. ${words}`.slice(0, 160))),
      hoverinfo: 'text',
      name: 'panel',
    } as unknown as Data,
  ];
}

/** Shapes of what a panel signals; other words are a cross. */
const shapes: Readonly<Record<string, string>> = { fire: 'triangle-down', fault: 'diamond-open', reset: 'circle-open' };

/** Names of a state, the longest first. A fire that lasts to the end was never reset, as far as is known. */
const stateNames = (state: 'fire' | 'fault', last: boolean): string[] =>
  state === 'fire' && last ? ['fire, held to the end: the site file names no reset', 'fire, held', 'fire'] : [state];

/** A bar cut to the window, and its name. */
interface Bar {
  readonly finding: NumberedFinding;
  readonly row: number;
  readonly start: number;
  /** Length on the plot [ms]. */
  readonly long: number;
  readonly name: string;
  /** Whether the name stands in the bar, or beside it. */
  readonly inside: boolean;
}

/** A bar and the name beside it: a bar of few pixels is hard to hit, its name is not. */
const handle = (bar: Bar, perPixel: number): Bar => ({
  ...bar,
  long: bar.long + (bar.name.length * 6.6 + 6) * perPixel,
});

/** Bars that are not seen, to be pointed at. */
function unseenBars(bars: readonly Bar[], zone: SiteZone): Data {
  return {
    ...placed(bars, zone),
    marker: { opacity: 0 },
    name: 'handles',
  } as unknown as Data;
}

/** Where bars lie, and what they say when they are pointed at. */
const placed = (bars: readonly Bar[], zone: SiteZone): object => ({
  type: 'bar',
  orientation: 'h',
  base: bars.map(({ start }) => zone.wall(start)),
  x: bars.map(({ long }) => long),
  y: bars.map(({ row }) => row),
  width: 0.8,
  xaxis: 'x',
  yaxis: 'y2',
  customdata: bars.map(({ finding }) => finding.number),
  hovertext: bars.map(({ finding }) => plain(`${finding.number} ${finding.severity}: ${finding.cause}`)),
  hoverinfo: 'text',
});

/** Bars of one severity, filled alike. */
function barsAlike(same: readonly Bar[], zone: SiteZone, chosen: number | null, colours: Palette): Data {
  const severity = same[0]?.finding.severity ?? 'note';
  const solid = severity === 'act';
  return {
    ...placed(same, zone),
    text: same.map(({ name }) => plain(name)),
    textposition: same.map(({ inside }) => (inside ? 'inside' : 'outside')),
    insidetextanchor: 'start',
    constraintext: 'none',
    textangle: 0,
    cliponaxis: true,
    insidetextfont: { size: 12, color: solid ? colours.paper : colours.ink },
    outsidetextfont: { size: 12, color: colours.ink },
    marker: {
      color: solid ? colours.deep : colours.paper,
      line: {
        color: same.map(({ finding }) => (finding.number === chosen ? colours.warm : colours.deep)),
        width: same.map(({ finding }) => (finding.number === chosen ? 3 : 1)),
      },
      ...(severity === 'watch'
        ? {
            pattern: {
              shape: '/',
              bgcolor: colours.paper,
              fgcolor: colours.hatch,
              fgopacity: 1,
              size: 7,
              solidity: 0.22,
            },
          }
        : {}),
    },
    name: severity,
  } as unknown as Data;
}

export const nameOnBar = ({ number, cause }: NumberedFinding): string => `${number} ${causeOnBar(cause)}`;

/** A name beside its bar is left out where the edge of the plot would cut it. */
function outsideName(name: string, start: number, long: number, perPixel: number, window: Window): string {
  const room = (window.to - start - long) / perPixel;
  if (room > name.length * 6.6 + 6) return name;
  return room > 20 ? (name.split(' ')[0] ?? '') : '';
}

/** Shading behind the line: of findings short enough to be local, and of the chosen one. */
function shading({ strips, window, zone, chosen }: Lane, colours: Palette): Partial<Shape>[] {
  const local = 0.2 * (window.to - window.from);
  const least = (window.to - window.from) / 500;
  const shapes: Partial<Shape>[] = [];
  for (const { finding } of strips) {
    const isChosen = finding.number === chosen;
    const spans = finding.episodes ?? [[finding.start, finding.end] as const];
    if (!isChosen && (finding.episodes !== undefined || finding.end - finding.start > local)) continue;
    for (const [start, end] of spans) {
      if (start > window.to || end < window.from) continue;
      shapes.push({
        type: 'rect',
        layer: 'below',
        xref: 'x',
        yref: 'y domain',
        x0: zone.wall(start),
        x1: zone.wall(Math.max(end, start + least)),
        y0: 0,
        y1: 1,
        fillcolor: isChosen ? colours.warm : colours.band,
        opacity: isChosen ? 0.22 : 0.2,
        line: { width: 0 },
      });
    }
  }
  return shapes;
}

function thresholds(
  { scale, alarmThreshold, faultThreshold }: Lane,
  range: [number, number],
  colours: Palette,
): Partial<Shape>[] {
  return [
    { at: scaledThreshold(alarmThreshold, scale), dash: 'dash' as const, color: colours.warm },
    { at: scaledThreshold(faultThreshold, scale), dash: 'dot' as const, color: colours.soft },
  ]
    .filter(({ at }) => at >= range[0] && at <= range[1])
    .map(({ at, dash, color }) => ({
      type: 'line',
      layer: 'above',
      xref: 'paper',
      yref: 'y',
      x0: 0,
      x1: 1,
      y0: at,
      y1: at,
      line: { color, width: 1.3, dash },
    }));
}

function thresholdNames(lane: Lane, range: [number, number], colours: Palette): NonNullable<Layout['annotations']> {
  const { scale, alarmThreshold, faultThreshold } = lane;
  return [
    { at: scaledThreshold(alarmThreshold, scale), name: `alarm ${alarmThreshold} %`, color: colours.warm },
    { at: scaledThreshold(faultThreshold, scale), name: `blocked ${faultThreshold} %`, color: colours.soft },
  ]
    .filter(({ at }) => at >= range[0] && at <= range[1])
    .map(({ at, name, color }) => ({
      xref: 'paper',
      yref: 'y',
      x: 1,
      y: at,
      xanchor: 'right',
      yanchor: scale === 'level' ? 'top' : 'bottom',
      text: name,
      showarrow: false,
      font: { size: 11, color },
      borderpad: 1,
    })) as NonNullable<Layout['annotations']>;
}
