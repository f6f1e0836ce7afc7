import { type PlannedHall, slopeOf } from './hall.js';

/** Where a row of beams stands across a hall, and what it covers [m from the left wall]. */
export interface RowAcross {
  readonly across: number;
  readonly covers: readonly [from: number, to: number];
}

/** Distances that rows must keep [m]. */
export interface RowDistances {
  readonly betweenBeams: number;
  readonly toSide: number;
  /** How much farther a row in an apex reaches for each degree of slope [%/degree], and at most [%]. */
  readonly apexWidening: number;
  readonly apexWideningMost: number;
}

/** Rounding of the division of a width by a distance that it is a multiple of. */
const nearly = 1e-9;

/** Rows that a width needs, spread evenly. */
export const rowsFor = (
  width: number,
  { betweenBeams, toSide }: Pick<RowDistances, 'betweenBeams' | 'toSide'>,
): number => Math.max(1, Math.ceil(width / betweenBeams - nearly), Math.ceil(width / (2 * toSide) - nearly));

/** So many rows, evenly over a width that begins at `from`. */
export const evenly = (from: number, width: number, rows: number): RowAcross[] =>
  Array.from({ length: rows }, (_, i) => ({
    across: from + ((i + 0.5) * width) / rows,
    covers: [from + (i * width) / rows, from + ((i + 1) * width) / rows] as const,
  }));

/** How far a row in the apex of a hall reaches to either side [m]: farther, the steeper the roof. */
export function apexReach(hall: PlannedHall, { toSide, apexWidening, apexWideningMost }: RowDistances): number {
  const wider = Math.min(apexWidening * slopeOf(hall), apexWideningMost);
  return toSide * (1 + wider / 100);
}

/**
 * Rows of beams across a hall: as few as the distances allow, spread evenly. Under a pitched roof one row stands in the
 * apex, where smoke gathers, and the others share what it does not reach on either side.
 *
 * @returns from the left wall to the right
 */
export function rowsAcross(hall: PlannedHall, distances: RowDistances): RowAcross[] {
  const { width } = hall;
  if (hall.roof.shape === 'flat') return evenly(0, width, rowsFor(width, distances));
  const middle = width / 2;
  const reach = Math.min(apexReach(hall, distances), middle);
  const apex: RowAcross = { across: middle, covers: [middle - reach, middle + reach] };
  const rest = middle - reach;
  if (rest <= nearly) return [apex];
  const rows = rowsFor(rest, distances);
  return [...evenly(0, rest, rows), apex, ...evenly(middle + reach, rest, rows)];
}
