import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Random numbers for invented series: the same seed gives the same. */
export function random(seed: number) {
  const generator = xoroshiro128plus(seed);
  const uniform = (): number => uniformFloat64(generator);
  const between = (low: number, high: number): number => low + (high - low) * uniform();
  return {
    between,
    logBetween: (low: number, high: number): number => Math.exp(between(Math.log(low), Math.log(high))),
    chance: (probability: number): boolean => uniform() < probability,
    below: (count: number): number => Math.floor(uniform() * count),
    oneOf: <T>(list: readonly [T, ...T[]]): T => list[Math.floor(uniform() * list.length)] ?? list[0],
    exponential: (): number => -Math.log(1 - uniform()),
    normal: (): number => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
  };
}
