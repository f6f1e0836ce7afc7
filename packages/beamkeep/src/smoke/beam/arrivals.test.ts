import { describe, expect, it } from 'vitest';
import { arrivals } from './arrivals.js';

const of = (...values: number[]) => Float64Array.from(values);

describe('arrivals', () => {
  it('shifts what leaves by its lag', () => {
    expect([...arrivals(of(1, 2, 3, 4, 5), of(2, 2, 2, 2, 2))]).toEqual([0, 0, 1, 2, 3]);
  });
  it('what is overtaken does not count', () => {
    expect([...arrivals(of(1, 2, 3, 4, 5), of(9, 3, 1, 1, 1))]).toEqual([0, 0, 0, 3, 4]);
  });
  it('a lag of part of a second counts to the next', () => {
    expect([...arrivals(of(1, 2, 3), of(0.5, 0.5, 0.5))]).toEqual([0, 1, 2]);
  });
  it('what never comes leaves nothing', () => {
    const never = Number.POSITIVE_INFINITY;
    expect([...arrivals(of(1, 2), of(never, never))]).toEqual([0, 0]);
  });
});
