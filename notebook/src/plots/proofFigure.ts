import type { ProofJson } from 'beamkeep/commissioning';
import type { Beam } from 'beamkeep/site';
import type { Shape } from 'plotly.js-dist-min';
import type { SiteZone } from '../bench/siteZone.js';
import { ground, ruled } from './ground.js';
import type { Palette } from './palette.js';
import type { Figure } from './plotly.js';
import { margins, timeAxis } from './timeAxis.js';

export const proofHeight = 280;

/** Where the numbers of the steps stand, in rows above the plot, so that two beside each other stay apart. */
const rows = [1.005, 1.075] as const;

/** Steps that begin nearer to each other than this share one label [px]. */
const nearest = 14;

/**
 * The logged test of a proof: obscuration as the equipment sees it, thresholds, where each step begins and what it
 * came to, and when something was signalled. A step that failed has a thick dashed line and says so in words.
 */
export function proofFigure(
  { trace, steps }: ProofJson,
  { alarmThreshold, faultThreshold }: Pick<Beam, 'alarmThreshold' | 'faultThreshold'>,
  zone: SiteZone,
  width: number,
  colours: Palette,
): Figure {
  const from = Date.parse(trace.start);
  const window = { from, to: from + 1000 * Math.max(1, trace.seconds.at(-1) ?? 1) };
  const { l, r } = margins(width);
  const wall = (iso: string): string => zone.wall(Date.parse(iso));
  const begun = steps.flatMap(({ start, verdict }, row) => (start === null ? [] : [{ start, verdict, row }]));
  const signals = steps.flatMap(({ signalAt, state, expected }) =>
    signalAt === null ? [] : [{ signalAt, what: state === 'fault' || state === 'fire' ? state : expected.signal }],
  );
  const level = (y: number, dash: 'dash' | 'dot', color: string): Partial<Shape> => ({
    type: 'line',
    xref: 'paper',
    yref: 'y',
    x0: 0,
    x1: 1,
    y0: y,
    y1: y,
    line: { color, width: 1.3, dash },
  });
  return {
    data: [
      {
        type: 'scatter',
        mode: 'lines',
        x: trace.seconds.map((after) => zone.wall(from + 1000 * after)),
        y: [...trace.values],
        line: { color: colours.ink, width: 1.2 },
        hoverinfo: 'skip',
        name: 'obscuration',
      },
      {
        type: 'scatter',
        mode: 'text+markers',
        x: signals.map(({ signalAt }) => wall(signalAt)),
        y: signals.map(() => 110),
        text: signals.map(({ what }) => what ?? 'signal'),
        textposition: 'middle right',
        textfont: { size: 11, color: colours.warm },
        marker: {
          symbol: signals.map(({ what }) => (what === 'fault' ? 'diamond-open' : 'triangle-down')),
          size: 8,
          color: colours.warm,
        },
        hoverinfo: 'skip',
        name: 'signals',
      },
    ],
    layout: {
      width,
      height: proofHeight,
      margin: { l, r, t: 40, b: 44 },
      ...ground(colours),
      showlegend: false,
      dragmode: false,
      hovermode: false,
      xaxis: { ...timeAxis(window, zone, colours, true, width), fixedrange: true },
      yaxis: {
        ...ruled(colours),
        range: [-4, 118],
        tickvals: [0, 20, 40, 60, 80, 100],
        title: { text: width < 520 ? '' : 'obscuration [%]', font: { size: 11 }, standoff: 4 },
      },
      shapes: [
        level(alarmThreshold, 'dash', colours.warm),
        level(faultThreshold, 'dot', colours.soft),
        ...begun.map(({ start, verdict }): Partial<Shape> => {
          const failed = verdict === 'fail';
          const line = failed
            ? { color: colours.warm, width: 2.5, dash: 'dash' as const }
            : { color: colours.deep, width: 1 };
          return { type: 'line', xref: 'x', yref: 'paper', x0: wall(start), x1: wall(start), y0: 0, y1: 1, line };
        }),
      ],
      annotations: [
        ...[
          { y: alarmThreshold, text: `alarm ${alarmThreshold} %`, color: colours.warm },
          { y: faultThreshold, text: `blocked ${faultThreshold} %`, color: colours.soft },
        ].map(({ y, text, color }) => ({
          xref: 'paper' as const,
          x: 1,
          y,
          xanchor: 'right' as const,
          yanchor: 'bottom' as const,
          text,
          showarrow: false,
          font: { size: 11, color },
        })),
        ...labels(begun, ((window.to - window.from) / Math.max(1, width - l - r)) * nearest).map(
          ({ start, failed, text }, at) => ({
            x: wall(start),
            yref: 'paper' as const,
            y: rows[at % rows.length] ?? 1,
            xanchor: 'left' as const,
            yanchor: 'bottom' as const,
            text: failed ? `<b>${text}</b>` : text,
            showarrow: false,
            font: { size: 12, color: failed ? colours.warm : colours.ink },
          }),
        ),
      ],
    },
  };
}

interface Begun {
  readonly start: string;
  readonly verdict: ProofJson['steps'][number]['verdict'];
  readonly row: number;
}

/** Numbers of the steps at their places; those that begin together share a place: "7, 8". */
export function labels(
  begun: readonly Begun[],
  together: number,
): { readonly start: string; readonly failed: boolean; readonly text: string }[] {
  const places: Begun[][] = [];
  for (const step of begun) {
    const last = places.at(-1);
    const [first] = last ?? [];
    if (last && first && Date.parse(step.start) - Date.parse(first.start) < together) last.push(step);
    else places.push([step]);
  }
  return places.flatMap((place) => {
    const [first] = place;
    const text = place.map(({ row, verdict }) => (verdict === 'fail' ? `${row + 1} FAIL` : String(row + 1))).join(', ');
    return first ? [{ start: first.start, failed: place.some(({ verdict }) => verdict === 'fail'), text }] : [];
  });
}
