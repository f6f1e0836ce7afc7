import { minute } from '../../columns/index.js';
import { median } from '../../statistics/index.js';
import { type Excursion, slowerOut } from '../excursions.js';
import type { Picture } from '../picture.js';

/*
 * Dust rises as the work throws it up and thins as the air carries it off, which takes longer. So the loss goes up in
 * larger strides than it comes down in. Shaking and noise stride up and down alike; what a fit of the daily cycle leaves
 * behind swings to both sides and bends both ways alike; mist grows through the night and goes quicker, as it warms.
 */

/** How dips come and go, all days together. */
export interface Puffs {
  /** Squares of strides up less those of strides down, over what chance gives: 0 where they are alike. */
  readonly steepness: number;
  /** Natural log of the time out over the time in of a dip: median. */
  readonly lingers: number;
}

/** Length of a stride [ms], or a sample where they stand further apart: the haze within a puff is quicker. Own choice. */
const stride = 5 * minute;
/** Strides before and after the dips of a day. */
const beside = 3;

/**
 * Measures how the dips of some days come and go.
 *
 * @param days the dips of each day, none of them empty
 */
export function puffs({ view, depth }: Picture, days: Iterable<readonly Excursion[]>): Puffs {
  const { time } = view.trace;
  const rows = Math.max(1, Math.round(stride / view.interval));
  const width = rows * view.interval;
  let [up, down, fourth] = [0, 0, 0];
  const lingers: number[] = [];
  for (const dips of days) {
    for (const dip of dips) lingers.push(slowerOut(dip, view.interval));
    const from = Math.max(0, Math.min(...dips.map((e) => e.from)) - beside * rows);
    const to = Math.min(depth.length, Math.max(...dips.map((e) => e.to)) + beside * rows + 1);
    const course = strides(time.subarray(from, to), depth.subarray(from, to), width, view.interval / 2);
    for (let k = 1; k < course.length; k++) {
      const change = (course[k] as number) - (course[k - 1] as number);
      if (Number.isNaN(change)) continue;
      if (change > 0) up += change * change;
      else down += change * change;
      fourth += change ** 4;
    }
  }
  return {
    steepness: (up - down) / Math.sqrt(Math.max(fourth, 1e-20)),
    lingers: median(lingers),
  };
}

/** Mean of each stride of some rows; NaN where it holds none. A row that begins by `slack` early counts with the next. */
function strides(time: Float64Array, depth: Float64Array, width: number, slack: number): Float64Array {
  const first = time[0] as number;
  const at = (row: number): number => Math.floor(((time[row] as number) - first + slack) / width);
  const course = new Float64Array(at(time.length - 1) + 1).fill(Number.NaN);
  for (let i = 0; i < time.length; ) {
    const stride = at(i);
    let [sum, n] = [0, 0];
    for (; i < time.length && at(i) === stride; i++, n++) sum += depth[i] as number;
    course[stride] = sum / n;
  }
  return course;
}
