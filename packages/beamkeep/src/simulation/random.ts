import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/*
 * Chance with a name. Every effect on every beam draws from a stream of its own, named after what it is
 * ("7/B2/dirt"), so that adding an effect changes nothing else in a log, and beams that share a cause (mist at one
 * height, dust in one hall) share it by drawing from a stream of one name.
 */

/** A stream of random numbers: the same seed and names give the same numbers, bit for bit. */
export interface Random {
  /** 0 or more, less than 1. */
  uniform(): number;
  /** Evenly between two bounds. */
  between(low: number, high: number): number;
  /** Evenly in the logarithm between two bounds above 0. */
  logBetween(low: number, high: number): number;
  /** Whole number, both bounds included. */
  integer(low: number, high: number): number;
  /** Normal distribution with mean 0 and spread 1. */
  normal(): number;
  /** Exponential distribution with mean 1. */
  exponential(): number;
  /** True so often. */
  chance(probability: number): boolean;
  /** One of a list, each as likely. */
  pick<T>(list: readonly [T, ...T[]]): T;
  /** One of a list, as likely as its weight. */
  weighted<T>(list: readonly (readonly [T, number])[]): T;
}

/** FNV-1a with a final mixing step, so that names which differ by one letter give unlike seeds. */
function hash(text: string): number {
  let h = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) h = Math.imul(h ^ text.charCodeAt(i), 0x01000193);
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) | 0;
}

/**
 * A stream of random numbers.
 *
 * @param seed whole number
 * @param names what the stream is for; other names give an independent stream
 * @example random(7, 'B2', 'dirt').between(0, 0.6)
 */
export function random(seed: number, ...names: readonly (string | number)[]): Random {
  const generator = xoroshiro128plus(hash([seed, ...names].join('/')));
  const uniform = () => uniformFloat64(generator);
  let spare = Number.NaN;
  const normal = () => {
    if (!Number.isNaN(spare)) {
      const value = spare;
      spare = Number.NaN;
      return value;
    }
    let x = 0;
    let y = 0;
    let s = 0;
    do {
      x = 2 * uniform() - 1;
      y = 2 * uniform() - 1;
      s = x * x + y * y;
    } while (s >= 1 || s === 0);
    const scale = Math.sqrt((-2 * Math.log(s)) / s); // Marsaglia's polar method
    spare = y * scale;
    return x * scale;
  };
  const between = (low: number, high: number) => low + (high - low) * uniform();
  return {
    uniform,
    between,
    logBetween: (low, high) => Math.exp(between(Math.log(low), Math.log(high))),
    integer: (low, high) => low + Math.floor(uniform() * (high - low + 1)),
    normal,
    exponential: () => -Math.log(1 - uniform()),
    chance: (probability) => uniform() < probability,
    pick: (list) => list[Math.floor(uniform() * list.length)] ?? list[0],
    weighted: (list) => {
      let rest = uniform() * list.reduce((sum, [, weight]) => sum + weight, 0);
      let chosen = list[0];
      for (const entry of list) {
        chosen = entry;
        rest -= entry[1];
        if (rest < 0) break;
      }
      if (!chosen) throw new RangeError('weighted: an empty list has nothing to choose from');
      return chosen[0];
    },
  };
}
