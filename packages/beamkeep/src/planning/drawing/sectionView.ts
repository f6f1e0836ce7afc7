import { topOf } from '../layout/hall.js';
import type { Plan } from '../layout/plan.js';
import { metres, pixelsPerMetre, roundLength, scaleBar } from './scale.js';
import { drawing, element, text } from './svg.js';

const margin = 56;

/**
 * The hall cut across, to scale: roof, rows of beams as dots with what must stay clear around them, heights, what each
 * row covers, and a scale bar.
 *
 * @param plan from `layBeams`
 * @param width of the drawing [pixels]
 * @param id before every id in it
 * @returns SVG
 */
export function sectionView(plan: Plan, width = 760, id = 'section-view'): string {
  const { hall, rows, clearRadius } = plan;
  const top = topOf(hall);
  const perMetre = Math.min(pixelsPerMetre(hall.width, width - 2 * margin), pixelsPerMetre(top, width - 2 * margin));
  const height = top * perMetre + 2 * margin;
  const left = (width - hall.width * perMetre) / 2;
  const x = (across: number): number => left + across * perMetre;
  const y = (above: number): number => margin + (top - above) * perMetre;
  const at = (across: number, above: number): string =>
    `${Number(x(across).toFixed(3))} ${Number(y(above).toFixed(3))}`;
  const apex = hall.roof.shape === 'pitched' ? `L${at(hall.width / 2, hall.roof.apex)}` : '';
  const outline = `M${at(0, 0)}L${at(0, hall.height)}${apex}L${at(hall.width, hall.height)}L${at(hall.width, 0)}Z`;
  const dots = rows.map(({ id: row, across, height: above, covers: [from, to], level }) =>
    [
      ...(clearRadius === null
        ? []
        : [
            element('circle', {
              cx: x(across),
              cy: y(above),
              r: clearRadius * perMetre,
              fill: 'none',
              stroke: 'currentColor',
              'stroke-dasharray': '3 3',
            }),
          ]),
      element('circle', {
        cx: x(across),
        cy: y(above),
        r: 4.5,
        fill: level === 'roof' ? 'currentColor' : 'none',
        stroke: 'currentColor',
        'stroke-width': 1.5,
      }),
      text(row, x(across) + 9, y(above) + 18),
      ...(level === 'roof'
        ? [
            element('path', {
              d: `M${at(from, 0)}V${Number((y(0) + 10).toFixed(3))}H${Number(x(to).toFixed(3))}V${Number(y(0).toFixed(3))}`,
              fill: 'none',
              stroke: 'currentColor',
            }),
          ]
        : []),
    ].join(''),
  );
  const described = rows.map(
    (row) =>
      `${row.id} ${metres(row.across)} from the left wall, ${metres(row.height)} above the floor, ${metres(row.belowCeiling)} below the roof`,
  );
  return drawing(
    {
      width,
      height,
      id,
      title: `Section of a hall ${metres(hall.width)} wide and ${metres(top)} high`,
      description: `${described.join('; ')}. ${clearRadius === null ? '' : `Dashed circles: ${metres(clearRadius)} to be kept clear. `}Drawn to scale.`,
    },
    element('path', {
      d: outline,
      fill: 'currentColor',
      'fill-opacity': 0.05,
      stroke: 'currentColor',
      'stroke-width': 2,
    }),
    ...dots,
    text(metres(top), x(hall.width) + 8, y(top / 2)),
    text(metres(hall.width), x(hall.width / 2), y(0) + 26, { 'text-anchor': 'middle' }),
    scaleBar(roundLength(hall.width), perMetre, margin, height - 18),
  );
}
