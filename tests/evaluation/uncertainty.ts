import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Ends of a 95 % interval. */
export type Limits = readonly [low: number, high: number];

const z = 1.959964; // 97.5 % point of the normal distribution

/**
 * 95 % interval of a share of `successes` in `n`.
 *
 * Source: E. B. Wilson, "Probable inference, the law of succession, and statistical inference", 1927 (from memory).
 */
export function wilson(successes: number, n: number): Limits {
  if (n === 0) return [0, 1];
  const share = successes / n;
  const middle = (share + (z * z) / (2 * n)) / (1 + (z * z) / n);
  const half = (z / (1 + (z * z) / n)) * Math.sqrt((share * (1 - share)) / n + (z * z) / (4 * n * n));
  return [Math.max(0, middle - half), Math.min(1, middle + half)];
}

/** Probability that a Poisson count of mean `mean` is at most `count`. */
function poissonBelow(count: number, mean: number): number {
  let term = Math.exp(-mean);
  let sum = term;
  for (let k = 1; k <= count; k++) {
    term *= mean / k;
    sum += term;
  }
  return sum;
}

/** Where a falling function of a positive number meets `level`, by halving. */
function meets(falling: (x: number) => number, level: number, high: number): number {
  let [low, top] = [0, high];
  for (let step = 0; step < 60; step++) {
    const middle = (low + top) / 2;
    if (falling(middle) > level) low = middle;
    else top = middle;
  }
  return (low + top) / 2;
}

/**
 * 95 % interval of the mean of a Poisson count, exact: each end leaves 2.5 % outside. Beyond 200 the normal
 * approximation does.
 */
export function poisson(count: number): Limits {
  if (count > 200) return [count - z * Math.sqrt(count), count + z * Math.sqrt(count)];
  const high = 3 * count + 20;
  return [
    count === 0 ? 0 : meets((mean) => poissonBelow(count - 1, mean), 0.975, high),
    meets((mean) => poissonBelow(count, mean), 0.025, high),
  ];
}

/**
 * 95 % interval of a figure over units that vary together (the findings of one beam), by drawing the units again with
 * replacement. The same seed gives the same interval.
 *
 * @param figure of a drawn list of units; NaN where it has none
 */
export function bootstrap<U>(
  units: readonly U[],
  figure: (drawn: readonly U[]) => number,
  seed = 1,
  draws = 500,
): Limits {
  if (units.length === 0) return [Number.NaN, Number.NaN];
  const generator = xoroshiro128plus(seed);
  const figures: number[] = [];
  for (let draw = 0; draw < draws; draw++) {
    const drawn = units.map(() => units[Math.floor(uniformFloat64(generator) * units.length)] as U);
    const value = figure(drawn);
    if (!Number.isNaN(value)) figures.push(value);
  }
  figures.sort((a, b) => a - b);
  const at = (q: number): number => figures[Math.round(q * (figures.length - 1))] ?? Number.NaN;
  return [at(0.025), at(0.975)];
}
