import { element, text } from './svg.js';

/** Pixels to a metre, so that so many metres fit into so many pixels. */
export const pixelsPerMetre = (metres: number, pixels: number): number => pixels / metres;

const steps = [0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

/** A round length that is about a fifth of the drawing [m]. */
export const roundLength = (metres: number): number =>
  steps.find((step) => step >= metres / 5) ?? (steps.at(-1) as number);

/** A bar that shows the scale. */
export function scaleBar(metres: number, perMetre: number, x: number, y: number): string {
  const length = metres * perMetre;
  return element(
    'g',
    { stroke: 'currentColor', 'stroke-width': 1.5 },
    element('path', { d: `M${x} ${y - 4}V${y}H${Number((x + length).toFixed(3))}V${y - 4}`, fill: 'none' }),
    text(`${metres} m`, x + length / 2, y + 14, { 'text-anchor': 'middle', stroke: 'none' }),
  );
}

/** A length for people: "12.5 m". */
export const metres = (value: number): string => `${Number(value.toFixed(2))} m`;
