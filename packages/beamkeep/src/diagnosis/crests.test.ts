import { describe, expect, it } from 'vitest';
import { hour, minute } from '../columns/index.js';
import { beside, type Crest, isCrest } from './crests.js';

/** So many crests, one each half an hour, each ten minutes long. */
const crests = (count: number, change: (k: number) => Partial<Crest> = () => ({})): Crest[] =>
  Array.from({ length: count }, (_, k) => ({ start: k * 30 * minute, length: 10 * minute, size: 0.1, ...change(k) }));
const first = (all: readonly Crest[]): boolean => isCrest(beside(all, 0), all[0] as Crest, minute);

describe('isCrest', () => {
  it('is one of eight others alike, and not of seven', () => {
    // The reach is twelve lengths: what lies further off is not asked.
    const close = { start: 0 };
    expect(first(crests(9, (k) => (k > 4 ? close : {})))).toBe(true);
    expect(first(crests(8, (k) => (k > 4 ? close : {})))).toBe(false);
  });
  it('asks for one size, whatever its unit, and for lengths within a factor of three', () => {
    const together = crests(9, () => ({ start: 0 }));
    expect(first(together)).toBe(true);
    expect(first(together.map((c) => ({ ...c, size: 50 * c.size })))).toBe(true);
    expect(first(together.map((c, k) => ({ ...c, size: k === 0 ? 0.2 : 0.1 })))).toBe(false);
    expect(first(together.map((c, k) => ({ ...c, length: k === 0 ? 10 * minute : 40 * minute })))).toBe(false);
  });
  it('knows no length better than the interval', () => {
    const brief = crests(9, (k) => ({ start: 0, length: k === 0 ? 0 : 0.9 * minute }));
    expect(first(brief)).toBe(true);
    expect(isCrest(brief, brief[0] as Crest, 0)).toBe(false);
  });
  it('is told from what lies within twelve lengths and half a day', () => {
    expect(first(crests(9, (k) => ({ start: 14 * minute * k })))).toBe(true);
    expect(first(crests(9, (k) => ({ start: 20 * minute * k })))).toBe(false);
    expect(first(crests(9, (k) => ({ start: 2 * hour * k, length: 3 * hour })))).toBe(false);
  });
});

describe('beside', () => {
  it('are the nearest on either side, itself among them', () => {
    const all = Array.from({ length: 200 }, (_, k) => k);
    expect(beside(all, 100)).toEqual(all.slice(68, 133));
    expect(beside(all, 1)).toEqual(all.slice(0, 34));
    expect(beside(all, 199)).toEqual(all.slice(167));
  });
});
