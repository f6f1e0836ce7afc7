import { median } from '../../statistics/index.js';
import type { Angles, Lobe } from './lobeModel.js';

/**
 * First guesses of the lobe in a scan: about the highest level, narrow and wide, and beyond the end where the level still
 * rises. A fit from each, and the best of them, does not stop at a stray peak.
 *
 * @param angles one column an axis, without NaN
 * @param level one a row, without NaN
 */
export function startingLobes(angles: Angles, level: Float64Array): Lobe[] {
  const floor = level.reduce((least, value) => Math.min(least, value), Number.POSITIVE_INFINITY);
  const top = highestRow(angles, level);
  const peak = Math.max((level[top] as number) - floor, Number.MIN_VALUE);
  const centre = angles.map((column) => column[top] as number);
  const widths = angles.map(span);
  const within = angles.map((column, k) => {
    // turns at which the level is still above half: their farthest is about the half-angle
    const turns = column.map((angle, row) =>
      (level[row] as number) - floor >= peak / 2 ? Math.abs(angle - (centre[k] as number)) : 0,
    );
    return turns.reduce((most, turn) => Math.max(most, turn), 0) || (widths[k] as number) / 4;
  });
  const wide = widths.map((width) => width / 2);
  const beyond = angles.map((column, k) => {
    const middle = median(column);
    return (centre[k] as number) + Math.sign((centre[k] as number) - middle) * (wide[k] as number);
  });
  return [
    { peak, floor, centre, halfAngle: within, power: 2 },
    { peak, floor, centre, halfAngle: within.map((turn) => turn / 2), power: 2 },
    { peak, floor, centre, halfAngle: wide, power: 2 },
    { peak: 1.5 * peak, floor, centre: beyond, halfAngle: wide, power: 2 },
  ].map((lobe) => ({ ...lobe, halfAngle: lobe.halfAngle.map((turn) => turn || 1) }));
}

/** The row that stands highest together with its two nearest: one spike alone is no peak. */
function highestRow(angles: Angles, level: Float64Array): number {
  const widths = angles.map((column) => span(column) || 1);
  let highest = 0;
  let most = Number.NEGATIVE_INFINITY;
  level.forEach((value, row) => {
    const near = Array.from(level, (other, i) => ({ other, distance: distance(angles, widths, row, i) }))
      .sort((a, b) => a.distance - b.distance)
      .slice(0, 3)
      .map(({ other }) => other);
    const height = median(near) + 1e-6 * value;
    if (height > most) {
      most = height;
      highest = row;
    }
  });
  return highest;
}

const distance = (angles: Angles, widths: readonly number[], a: number, b: number) =>
  angles.reduce(
    (sum, column, k) => sum + (((column[a] as number) - (column[b] as number)) / (widths[k] as number)) ** 2,
    0,
  );

/** Greatest less least. */
function span(values: Float64Array): number {
  let least = Number.POSITIVE_INFINITY;
  let greatest = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    least = Math.min(least, value);
    greatest = Math.max(greatest, value);
  }
  return greatest - least;
}
