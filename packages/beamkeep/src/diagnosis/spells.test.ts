import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { day } from '../columns/index.js';
import { spells } from './spells.js';

describe('spells', () => {
  it('joins times 7.5 days apart, and parts those further apart', () => {
    const one = [0, day] as const;
    expect(spells([one, [8.5 * day, 9 * day]])).toHaveLength(1);
    expect(spells([one, [8.5 * day + 1, 9 * day]])).toHaveLength(2);
  });
  it('measures from the latest end, not from the last begin', () =>
    expect(
      spells([
        [0, 20 * day],
        [day, 2 * day],
        [25 * day, 26 * day],
      ]),
    ).toHaveLength(1));
  it('law: keeps every time once, in order, and neighbouring spells lie more than 7.5 days apart', () =>
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.integer({ min: 0, max: 200 }), fc.integer({ min: 0, max: 5 }))), (times) => {
        const given = times.map(([from, long]) => [from * day, (from + long) * day] as const);
        const made = spells(given);
        expect(made.flatMap((s) => s.episodes).map(([from]) => from)).toEqual(
          given.map(([from]) => from).sort((a, b) => a - b),
        );
        for (const s of made) {
          expect(s.start).toBe(Math.min(...s.episodes.map(([from]) => from)));
          expect(s.end).toBe(Math.max(...s.episodes.map(([, to]) => to)));
        }
        for (let k = 1; k < made.length; k++)
          expect((made[k]?.start ?? 0) - (made[k - 1]?.end ?? 0)).toBeGreaterThan(7.5 * day);
      }),
      { seed: 1 },
    ));
});
