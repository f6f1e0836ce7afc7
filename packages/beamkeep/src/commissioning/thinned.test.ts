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
});
