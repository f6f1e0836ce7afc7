import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { normalQuantile } from './distributions/normal.js';

/** Standard normal numbers, one a call, the same for the same seed. */
export function normalNoise(seed: number): () => number {
  const generator = xoroshiro128plus(seed);
  return () => normalQuantile(uniformFloat64(generator));
}
