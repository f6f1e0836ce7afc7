/*
 * The shape of a slow loss: flat until it begins, then either steady (dirt) or with the square of the time since
 * (an aim that creeps away from its peak at an even pace). Both are fitted for every begin; the ratio of what they leave
 * unexplained tells how much the record speaks for one or the other.
 */

/** How a slow loss grows. */
export interface Growth {
  /** Place where it begins. */
  readonly from: number;
  /** Growth from there to the end, by the better shape. */
  readonly gained: number;
  /** For speeding up (positive) against steady growth (negative): half the log of the ratio of the rests, times n. */
  readonly speedsUp: number;
  /** Share of the variance that the better shape explains. */
  readonly explained: number;
}

/** Begins that are tried, evenly over the first four fifths. */
const begins = 20;
/** Days resemble their neighbours: so many count as one. */
const alike = 4;
/** What one more begin must win against none at all, as a share of the rest: the begin is a number fitted, too. */
const cost = 0.15;

/**
 * Finds begin and shape of a slow loss.
 *
 * @param x instants, rising
 * @param y loss at each [dB], at least four
 * @param noise spread of a value about its course [dB]
 */
export function growthOf(x: Float64Array, y: Float64Array, noise: number): Growth {
  const n = y.length;
  const last = x[n - 1] as number;
  let steady = { rest: Number.POSITIVE_INFINITY, from: 0, gained: 0 };
  let square = steady;
  const floor = n * noise * noise * 0.5;
  const [whole] = fit(x, y, (x[0] as number) - 1, 0);
  for (let k = 0; k < begins; k++) {
    const from = Math.floor((0.8 * n * k) / begins);
    const begin = x[from] as number;
    const penalty = k === 0 ? 1 : 1 + cost;
    const [rest1, slope1] = fit(x, y, begin, 1);
    const [rest2, slope2] = fit(x, y, begin, 2);
    const span = last - begin;
    if ((rest1 + floor) * penalty < steady.rest) {
      steady = { rest: (rest1 + floor) * penalty, from, gained: slope1 * span };
    }
    if ((rest2 + floor) * penalty < square.rest) {
      square = { rest: (rest2 + floor) * penalty, from, gained: slope2 * span * span };
    }
  }
  const speedsUp = (Math.log(steady.rest / square.rest) * n) / alike / 2;
  const better = speedsUp > 0 ? square : steady;
  return { from: better.from, gained: better.gained, speedsUp, explained: 1 - better.rest / (whole + floor) };
}

/** Least squares of a constant and a power of the time since a begin: the rest, and the power's factor. */
function fit(x: Float64Array, y: Float64Array, begin: number, power: number): [number, number] {
  const n = y.length;
  let sumU = 0;
  let sumY = 0;
  let sumUu = 0;
  let sumUy = 0;
  let sumYy = 0;
  for (let i = 0; i < n; i++) {
    const since = Math.max(0, (x[i] as number) - begin);
    const u = power === 0 ? 0 : power === 1 ? since : since * since;
    const v = y[i] as number;
    sumU += u;
    sumY += v;
    sumUu += u * u;
    sumUy += u * v;
    sumYy += v * v;
  }
  const spread = sumUu - (sumU * sumU) / n;
  const together = sumUy - (sumU * sumY) / n;
  const factor = spread > 0 ? together / spread : 0;
  return [Math.max(0, sumYy - (sumY * sumY) / n - factor * together), factor];
}
