import type { CoveredJson } from 'beamkeep/commissioning';
import type { SiteZone } from '../bench/siteZone.js';
import { ground, ruled } from './ground.js';
import type { Palette } from './palette.js';
import type { Figure } from './plotly.js';
import { margins, timeAxis } from './timeAxis.js';

export const coveredHeight = 220;

/** A covered test: the level, and the stretches that were taken for clean and for covered. */
export function coveredFigure(test: CoveredJson, zone: SiteZone, width: number, colours: Palette): Figure {
  const { start, seconds, values } = test.trace;
  const from = Date.parse(start);
  const { l, r } = margins(width);
  const window = { from, to: from + 1000 * Math.max(1, seconds.at(-1) ?? 1) };
  const stretches = [
    { stretch: test.before, name: 'clean' },
    { stretch: test.covered, name: 'covered' },
    { stretch: test.after, name: 'clean' },
  ].flatMap(({ stretch, name }) =>
    stretch?.from && stretch.to
      ? [{ name, x0: zone.wall(Date.parse(stretch.from)), x1: zone.wall(Date.parse(stretch.to)) }]
      : [],
  );
  return {
    data: [
      {
        type: 'scatter',
        mode: 'lines',
        x: seconds.map((after) => zone.wall(from + 1000 * after)),
        y: values.map((share) => 100 * share),
        line: { color: colours.ink, width: 1.2 },
        hoverinfo: 'skip',
        name: 'level',
      },
    ],
    layout: {
      width,
      height: coveredHeight,
      margin: { l, r, t: 20, b: 44 },
      ...ground(colours),
      showlegend: false,
      dragmode: false,
      hovermode: false,
      xaxis: { ...timeAxis(window, zone, colours, true, width), fixedrange: true },
      yaxis: {
        ...ruled(colours),
        title: { text: width < 520 ? '' : 'level [%]', font: { size: 11 }, standoff: 4 },
      },
      shapes: stretches.map(({ x0, x1 }) => ({
        type: 'rect' as const,
        layer: 'below' as const,
        xref: 'x' as const,
        yref: 'paper' as const,
        x0,
        x1,
        y0: 0,
        y1: 1,
        fillcolor: colours.band,
        opacity: 0.2,
        line: { width: 0 },
      })),
      annotations: stretches.map(({ name, x0 }) => ({
        x: x0,
        yref: 'paper' as const,
        y: 1,
        xanchor: 'left' as const,
        yanchor: 'bottom' as const,
        text: name,
        showarrow: false,
        font: { size: 11, color: colours.soft },
      })),
    },
  };
}
