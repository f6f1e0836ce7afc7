import type { Plan } from '../layout/plan.js';
import { metres, pixelsPerMetre, roundLength, scaleBar } from './scale.js';
import { drawing, element, text } from './svg.js';

/*
 *      ______________________________
 *     |  ::::::::::::::::::::::::::  |      what a row covers, shaded in turn
 *     |  o------------------------o  | R1   a beam and its two ends
 *     |  ::::::::::::::::::::::::::  |
 *     |______________________________|
 *     |__ 10 m
 */

const margin = 96;
const top = 34;
const bottom = 58;

/**
 * The hall from above, to scale: rows at the roof, lower rows dashed, what each covers, distances and a scale bar.
 *
 * @param plan from `layBeams`
 * @param width of the drawing [pixels]
 * @param id before every id in it
 * @returns SVG
 */
export function planView(plan: Plan, width = 760, id = 'plan-view'): string {
  const { hall, rows, beams } = plan;
  const perMetre = pixelsPerMetre(hall.length, width - 2 * margin);
  const inside = { width: hall.length * perMetre, height: hall.width * perMetre };
  const height = inside.height + top + bottom;
  const x = (along: number): number => margin + along * perMetre;
  const y = (across: number): number => top + across * perMetre;
  const roof = rows.filter(({ level }) => level === 'roof');
  const levels = new Map(rows.map(({ id: row, level }) => [row, level]));
  const covered = roof.map(({ covers: [from, to] }, i) =>
    element('rect', {
      x: x(0),
      y: y(from),
      width: inside.width,
      height: (to - from) * perMetre,
      fill: 'currentColor',
      'fill-opacity': i % 2 === 0 ? 0.06 : 0.12,
    }),
  );
  const lines = beams.map(({ row, from, to }) => {
    const lower = levels.get(row) === 'lower';
    const attributes = { stroke: 'currentColor', 'stroke-width': 2, ...(lower && { 'stroke-dasharray': '6 5' }) };
    const end = { cy: y(from[1]), r: 4, fill: 'currentColor' };
    return [
      element('line', { x1: x(from[0]), y1: y(from[1]), x2: x(to[0]), y2: y(to[1]), ...attributes }),
      element('circle', { cx: x(from[0]), ...end }),
      element('circle', { cx: x(to[0]), ...end }),
    ].join('');
  });
  const sides = ['roof', 'lower'] as const;
  const names = sides.flatMap((side) => {
    const here = rows.filter(({ level }) => level === side);
    return [...new Set(here.map(({ across }) => across))].map((place) => {
      const ids = here.filter(({ across }) => across === place).map(({ id: row }) => row);
      const label = `${ids.join(', ')}  ${metres(place)}`;
      return side === 'roof'
        ? text(label, x(hall.length) + 10, y(place) + 4)
        : text(label, margin - 10, y(place) + 4, { 'text-anchor': 'end' });
    });
  });
  const described = rows.map(
    (row) => `${row.id} ${metres(row.across)} from the left wall, ${metres(row.height)} above the floor`,
  );
  return drawing(
    {
      width,
      height,
      id,
      title: `Plan of a hall of ${metres(hall.length)} by ${metres(hall.width)}`,
      description: `${rows.length} rows of beams along the hall: ${described.join('; ')}. Drawn to scale.`,
    },
    ...covered,
    element('rect', {
      x: x(0),
      y: y(0),
      width: inside.width,
      height: inside.height,
      fill: 'none',
      stroke: 'currentColor',
      'stroke-width': 2,
    }),
    ...lines,
    ...names,
    text(`${metres(hall.length)} long`, x(hall.length / 2), top - 12, { 'text-anchor': 'middle' }),
    text(`${metres(hall.width)} wide`, x(hall.length), height - bottom + 18, { 'text-anchor': 'end' }),
    scaleBar(roundLength(hall.length), perMetre, margin, height - 22),
  );
}
