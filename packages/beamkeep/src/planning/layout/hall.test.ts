import { describe, expect, it } from 'vitest';
import { checkHall, roofAt, slopeOf, topOf } from './hall.js';

const flat = { length: 60, width: 30, height: 10, roof: { shape: 'flat' } } as const;
const pitched = { length: 60, width: 20, height: 6, roof: { shape: 'pitched', apex: 16 } } as const;

describe('a hall', () => {
  it('has its roof at the height of the ceiling, or between eaves and apex', () => {
    expect([0, 15, 30].map((across) => roofAt(flat, across))).toEqual([10, 10, 10]);
    expect([0, 5, 10, 20].map((across) => roofAt(pitched, across))).toEqual([6, 11, 16, 6]);
    expect([topOf(flat), topOf(pitched)]).toEqual([10, 16]);
    expect([slopeOf(flat), slopeOf(pitched)]).toEqual([0, 45]);
  });
  it('says what must change', () => {
    expect(() => checkHall({ ...flat, width: 0 })).toThrow('width 0 m must be more than 0');
    expect(() => checkHall({ ...pitched, roof: { shape: 'pitched', apex: 6 } })).toThrow('apex 6 m must be higher');
  });
});
