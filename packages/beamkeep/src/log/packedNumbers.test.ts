import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { packed, perMillisecond, perReading, unpack } from './packedNumbers.js';

const back = (values: Float64Array, origin: number, tried: readonly number[]): Float64Array => {
  const into = new Float64Array(values.length);
  unpack(packed(values, values.length, origin, tried), into);
  return into;
};

describe('packed', () => {
  it('law: numbers come back to the last bit', () =>
    fc.assert(
      fc.property(
        fc.array(
          fc.oneof(
            fc.double(),
            fc.integer({ min: -1e6, max: 1e6 }).map((n) => n / 100),
            fc.constant(Number.NaN),
          ),
          { maxLength: 40 },
        ),
        (values) => {
          const all = Float64Array.from(values);
          const again = back(all, 0, perReading);
          for (const [at, value] of all.entries()) expect(Object.is(again[at], value)).toBe(true);
        },
      ),
      { seed: 5 },
    ));
  it('readings of few decimals take half the room', () => {
    expect(packed(Float64Array.of(99.7, Number.NaN, -0.25), 3, 0, perReading)).toHaveProperty('whole');
    expect(packed(Float64Array.of(Math.PI), 1, 0, perReading)).toHaveProperty('plain');
    expect(packed(Float64Array.of(-0), 1, 0, perReading)).toHaveProperty('plain');
  });
  it('times in seconds, milliseconds and microseconds', () => {
    const start = Date.UTC(2027, 0, 4);
    for (const step of [60_000, 1000, 1, 0.25]) {
      const times = Float64Array.from({ length: 50 }, (_, at) => start + at * step);
      expect(back(times, start, perMillisecond)).toEqual(times);
    }
  });
});
