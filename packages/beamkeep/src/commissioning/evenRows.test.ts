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
});
