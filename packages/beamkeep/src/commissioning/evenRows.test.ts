import { describe, expect, it } from 'vitest';
import { evenRows } from './evenRows.js';

describe('evenRows', () => {
  it('says a held value again every second, to the end', () => {
    const { time, values } = evenRows(Float64Array.of(0, 2500), Float64Array.of(100, 4), 5000);
    expect([...time]).toEqual([0, 1000, 2000, 3000, 4000, 5000]);
    expect([...values]).toEqual([100, 100, 100, 4, 4, 4]);
  });
  it('refuses what is no test', () =>
    expect(() => evenRows(Float64Array.of(0), Float64Array.of(1), 1e9)).toThrow('--from and --to'));
  it('a value holds from its own second on', () =>
    expect([...evenRows(Float64Array.of(5000, 7000), Float64Array.of(100, 4), 8000).values]).toEqual([100, 100, 4, 4]));
  it('of lines within one second the last holds', () =>
    expect([...evenRows(Float64Array.of(0, 200, 900), Float64Array.of(1, 2, 3), 1000).values]).toEqual([1, 3]));
  it('takes 100,000 seconds and no more', () => {
    const to = (end: number) => evenRows(Float64Array.of(0), Float64Array.of(1), end).time.length;
    expect(to(99_999_999)).toBe(100_000);
    expect(() => to(100_000_000)).toThrow('more than a day is no test');
  });
  it('nothing that was logged is nothing to say again', () => {
    const { time, values } = evenRows(new Float64Array(0), new Float64Array(0), 5000);
    expect([...time]).toEqual([5000]);
    expect([...values]).toEqual([Number.NaN]);
  });
  it('seconds are counted from the first line, not from the full second', () => {
    const { time, values } = evenRows(Float64Array.of(250, 1250, 1251), Float64Array.of(1, 2, 3), 2300);
    expect([...time]).toEqual([250, 1250, 2250]);
    expect([...values]).toEqual([1, 2, 3]);
  });
});
