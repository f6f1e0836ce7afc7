import { figure, printed } from '../../words/figure.js';
import { type Content, type Markup, svg } from '../markup.js';
import { ticks } from './ticks.js';

/*
 * A line chart as SVG: axes with round numbers, lines and dots, levels across and places down. It prints in black on
 * white, so that nothing depends on colour: lines differ by their stroke, and every level and place says what it is.
 */

/** A point of a chart, in the units of its axes. */
export type Point = readonly [x: number, y: number];

/** What is drawn. */
export interface Series {
  readonly points: readonly Point[];
  readonly kind: 'line' | 'thin' | 'dots';
}

/** A chart. */
export interface Chart {
  /** What it shows, for those who cannot see it. */
  readonly title: string;
  readonly xLabel: string;
  readonly yLabel: string;
  readonly series: readonly Series[];
  /** Lines across, each with its words. */
  readonly levels?: readonly { readonly y: number; readonly label: string }[];
  /** Lines down, each with its words. */
  readonly places?: readonly { readonly x: number; readonly label: string }[];
  /** Stretches along the bottom, each with its words. */
  readonly stretches?: readonly { readonly from: number; readonly to: number; readonly label: string }[];
  /** Least range of the y axis; what is drawn may widen it. */
  readonly yRange?: readonly [low: number, high: number];
}

const [width, height] = [720, 210];
const inside = { left: 52, right: 12, top: 24, bottom: 42 };

const extent = (values: readonly number[]): [number, number] => {
  const known = values.filter(Number.isFinite);
  return [Math.min(...known), Math.max(...known)];
};

const at = (value: number): string => value.toFixed(1);

/** Draws a chart. Points that are not numbers break a line. */
export function chart({
  title,
  xLabel,
  yLabel,
  series,
  levels = [],
  places = [],
  stretches = [],
  yRange,
}: Chart): Markup {
  const points = series.flatMap((each) => each.points);
  const [x0, x1] = extent([...points.map(([x]) => x), ...places.map(({ x }) => x)]);
  const [low, high] = extent([...points.map(([, y]) => y), ...levels.map(({ y }) => y), ...(yRange ?? [])]);
  const room = 0.05 * (high - low || 1);
  const [y0, y1] = [low - room, high + room];
  const x = (value: number) => inside.left + ((value - x0) / (x1 - x0 || 1)) * (width - inside.left - inside.right);
  const y = (value: number) =>
    height - inside.bottom - ((value - y0) / (y1 - y0)) * (height - inside.top - inside.bottom);
  const [left, right, top, bottom] = [inside.left, width - inside.right, inside.top, height - inside.bottom];
  const text = (px: number, py: number, content: Content, anchor = 'middle', size = 11) =>
    svg`<text x="${at(px)}" y="${at(py)}" font-size="${size}" text-anchor="${anchor}">${content}</text>`;
  return svg`<svg class="chart" viewBox="0 0 ${width} ${height}" role="img" aria-label="${title}" font-family="sans-serif" fill="#111">
<title>${title}</title>
${ticks(y0, y1, 4).map(
  (
    tick,
  ) => svg`<line x1="${left}" x2="${right}" y1="${at(y(tick))}" y2="${at(y(tick))}" stroke="#ddd"/>${text(left - 5, y(tick) + 4, printed(figure(tick)), 'end')}
`,
)}${ticks(x0, x1, 9).map(
  (
    tick,
  ) => svg`<line x1="${at(x(tick))}" x2="${at(x(tick))}" y1="${bottom}" y2="${bottom + 4}" stroke="#444"/>${text(x(tick), bottom + 16, printed(figure(tick)))}
`,
)}${stretches.map(
  ({
    from,
    to,
    label,
  }) => svg`<rect x="${at(x(from))}" y="${top}" width="${at(Math.max(x(to) - x(from), 1))}" height="${bottom - top}" fill="#eee"/>${text((x(from) + x(to)) / 2, (top + bottom) / 2, label)}
`,
)}${places.map(
  (
    { x: place, label },
    row,
  ) => svg`<line x1="${at(x(place))}" x2="${at(x(place))}" y1="${top}" y2="${bottom}" stroke="#444" stroke-dasharray="2 3"/>${text(
    Math.min(Math.max(x(place), left + 30), right - 30),
    top - 4 - 11 * (row % 2),
    label,
  )}
`,
)}${levels.map(
  ({
    y: level,
    label,
  }) => svg`<line x1="${left}" x2="${right}" y1="${at(y(level))}" y2="${at(y(level))}" stroke="#444" stroke-dasharray="6 3"/>${text(right - 3, y(level) - 4, label, 'end')}
`,
)}<rect x="${left}" y="${top}" width="${right - left}" height="${bottom - top}" fill="none" stroke="#444"/>
${series.map((each) => drawn(each, x, y))}${text((left + right) / 2, height - 6, xLabel)}
<text transform="translate(13 ${at((top + bottom) / 2)}) rotate(-90)" font-size="11" text-anchor="middle">${yLabel}</text>
</svg>`;
}

function drawn({ points, kind }: Series, x: (value: number) => number, y: (value: number) => number): Markup {
  if (kind === 'dots')
    return svg`<g fill="#fff" stroke="#111">${points
      .filter((point) => point.every(Number.isFinite))
      .map(([px, py]) => svg`<circle cx="${at(x(px))}" cy="${at(y(py))}" r="2.4"/>`)}</g>
`;
  let pen = 'M';
  const path = points.map(([px, py]) => {
    if (!Number.isFinite(px) || !Number.isFinite(py)) {
      pen = 'M';
      return '';
    }
    const step = `${pen}${at(x(px))} ${at(y(py))}`;
    pen = 'L';
    return step;
  });
  return svg`<path d="${path.join('')}" fill="none" stroke="#111" stroke-width="${kind === 'thin' ? 0.8 : 1.4}"/>
`;
}
