import { describe, expect, it } from 'vitest';
import { thinned } from './thinned.js';

describe('thinned', () => {
  it('keeps every sample of a short record', () => {
    const { start, seconds, values } = thinned(Float64Array.of(0, 500, 1000), Float64Array.of(1, 0, 1));
    expect(start).toBe('1970-01-01T00:00:00.000Z');
    expect(seconds).toEqual([0, 0.5, 1]);
    expect(values).toEqual([1, 0, 1]);
  });
  it('keeps the one deep sample of a long record, and both ends', () => {
    const time = Float64Array.from({ length: 20_000 }, (_, row) => row * 1000);
    const { seconds, values } = thinned(
      time,
      time.map((at) => (at === 12_345_000 ? 4 : 100)),
    );
    expect(seconds.length).toBeLessThanOrEqual(600);
    expect(values).toContain(4);
    expect(seconds[0]).toBe(0);
    expect(seconds.at(-1)).toBe(19_999);
  });
  it('of nothing is nothing', () => expect(thinned(new Float64Array(0), []).values).toEqual([]));
  it('keeps of each piece its first, least, greatest and last sample: 150 pieces of a long record', () => {
    const time = Float64Array.from({ length: 1500 }, (_, row) => row * 1000);
    const saw = time.map((_, row) => ([0, 5, 1, 9, 2, -7, 3, 4, 2, 1][row % 10] as number) + 100);
    const { seconds, values } = thinned(time, saw);
    expect(seconds.slice(0, 8)).toEqual([0, 3, 5, 9, 10, 13, 15, 19]);
    expect(values.slice(0, 4)).toEqual([100, 109, 93, 101]);
    expect(seconds).toHaveLength(600);
  });
  it('counts in the unit that is given, to so many digits', () => {
    const [time, values] = [Float64Array.of(500, 1623.45678), Float64Array.of(49, 98)];
    expect(thinned(time, values, 2, 98)).toEqual({
      start: '1970-01-01T00:00:00.500Z',
      seconds: [0, 1.12],
      values: [0.5, 1],
    });
    expect(thinned(time, Float64Array.of(1 / 3, 1)).values).toEqual([0.333, 1]);
  });
});
