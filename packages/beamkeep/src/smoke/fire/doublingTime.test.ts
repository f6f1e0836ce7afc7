import { describe, expect, it } from 'vitest';
import { doublingTime } from './doublingTime.js';

describe('doublingTime', () => {
  it('NIST TN 1455-1, Table 18: a smouldering chair doubles in 116 s, another in 617 s', () => {
    expect(doublingTime(9.46, 44.7, 260)).toBeCloseTo(116.1, 1);
    expect(doublingTime(5.35, 10.5, 600)).toBeCloseTo(616.8, 1);
  });
  it('tells a fall and a standstill', () => {
    expect(doublingTime(2, 1, 60)).toBe(-60);
    expect(doublingTime(2, 2, 60)).toBe(Number.POSITIVE_INFINITY);
  });
  it('says what must change', () => expect(() => doublingTime(0, 1, 60)).toThrow('first reading 0'));
});
