import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Random numbers, the same for the same seed. */
export interface Draws {
  /** 0 or more, less than 1. */
  uniform(): number;
  /** Mean 0, spread 1. */
  normal(): number;
  /** Gamma distribution of a mean and a variance, both above 0. */
  gamma(mean: number, variance: number): number;
}

/**
 * Random numbers from a seed.
 *
 * Source of `gamma`: Marsaglia and Tsang, "A simple method for generating gamma variables", 2000 (from memory); below
 * shape 1 the draw of shape + 1 is scaled down, so a gain that is mostly nothing and now and then a burst comes out.
 */
export function draws(seed: number): Draws {
  const generator = xoroshiro128plus(seed);
  const uniform = (): number => uniformFloat64(generator);
  const normal = (): number => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
  const standardGamma = (shape: number): number => {
    if (shape < 1) return standardGamma(shape + 1) * uniform() ** (1 / shape);
    const d = shape - 1 / 3;
    const c = 1 / Math.sqrt(9 * d);
    for (;;) {
      const x = normal();
      const v = (1 + c * x) ** 3;
      if (v > 0 && Math.log(1 - uniform()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v;
    }
  };
  return { uniform, normal, gamma: (mean, variance) => standardGamma(mean ** 2 / variance) * (variance / mean) };
}
