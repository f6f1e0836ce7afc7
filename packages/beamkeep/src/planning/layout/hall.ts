import { UsageError } from '../../columns/index.js';

/*
 * A hall for planning: beams run along its length, rows of beams stand side by side across its width.
 *
 *        pitched                       flat
 *          /\      apex              ________
 *         /  \                       |      |  height
 *        /    \    height (eaves)    |      |
 *        |    |                      |______|
 *         width
 */

/** Shape of the roof. The ridge of a pitched one runs along the length, in the middle. */
export type Roof = { readonly shape: 'flat' } | { readonly shape: 'pitched'; readonly apex: number };

/** A hall, inside measures. */
export interface PlannedHall {
  /** [m], more than 0; beams run along it */
  readonly length: number;
  /** [m], more than 0 */
  readonly width: number;
  /** Of a flat ceiling, or of the eaves of a pitched roof [m], more than 0. */
  readonly height: number;
  /** `apex`: its height above the floor [m], more than the eaves'. */
  readonly roof: Roof;
}

/** Refuses a hall that cannot be. */
export function checkHall({ length, width, height, roof }: PlannedHall): void {
  for (const [name, value] of Object.entries({ length, width, height })) {
    if (!(value > 0 && value < Number.POSITIVE_INFINITY)) {
      throw new UsageError(`${name} ${value} m must be more than 0 and finite`);
    }
  }
  if (roof.shape === 'pitched' && !(roof.apex > height && roof.apex < Number.POSITIVE_INFINITY)) {
    throw new UsageError(`apex ${roof.apex} m must be higher than the eaves, ${height} m`);
  }
}

/** Greatest height of the roof above the floor [m]. */
export const topOf = ({ height, roof }: PlannedHall): number => (roof.shape === 'pitched' ? roof.apex : height);

/** Height of the roof above the floor at a distance from the left wall [m]. */
export function roofAt({ width, height, roof }: PlannedHall, across: number): number {
  if (roof.shape === 'flat') return height;
  const fromRidge = Math.abs(across - width / 2);
  return roof.apex - ((roof.apex - height) * fromRidge) / (width / 2);
}

/** Slope of the roof against the horizontal [degrees]. */
export const slopeOf = ({ width, height, roof }: PlannedHall): number =>
  roof.shape === 'flat' ? 0 : (Math.atan((roof.apex - height) / (width / 2)) * 180) / Math.PI;
