import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { at, diagnosed, iso, recordOf, rise, siteOf, stated, theOne, viewed } from '../../../../tests/diagnosis/kit.js';
import { typical } from '../../../../tests/diagnosis/typical.js';
import { minute } from '../columns/index.js';
import { findBlocks } from './blocks.js';

const blocksOf = (level: (t: number) => number) => findBlocks(viewed(recordOf(level, { days: 20 })));

describe('findBlocks', () => {
  it('law: finds both edges of an object, give or take a sample', () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 288, max: 10 * 288 }),
        fc.integer({ min: 6, max: 2 * 288 }),
        fc.double({ min: 0.15, max: 0.95, noNaN: true }),
        (from, rows, lost) => {
          const [begin, end] = [at(0) + from * 5 * minute, at(0) + (from + rows) * 5 * minute];
          const [block, second] = blocksOf((t) => (t >= begin && t < end ? 1 - lost : 1));
          expect(second).toBeUndefined();
          expect(Math.abs((block?.from ?? 0) - from)).toBeLessThanOrEqual(1);
          expect(Math.abs((block?.to ?? 0) - from - rows)).toBeLessThanOrEqual(1);
        },
      ),
      { seed: 1, numRuns: 30 },
    ));
  it('finds one that stands over a long weekend; for a fortnight, only one that takes nearly all', () => {
    const standing = (days: number, lost: number) => blocksOf((t) => (t > at(2) && t < at(2 + days) ? 1 - lost : 1));
    expect(standing(3, 0.2)).toHaveLength(1);
    expect(standing(14, 0.8)).toHaveLength(1);
    expect(standing(14, 0.6)).toEqual([]);
    expect(standing(4, 0.2)).toEqual([]);
  });
  it('is told of a slight loss that stands for two days, unless somebody aimed the beam at its end or it stands on', () => {
    const slight = (lasts: number, work?: string) => {
      const record = recordOf((t) => (t > at(8, 10) && t < at(8, 10) + lasts * 24 * 60 * minute ? 0.94 : 1), {
        days: 20,
      });
      const end = at(8, 10) + lasts * 24 * 60 * minute;
      const visits = work === undefined ? [] : [{ time: iso(end), beam: 'B1', work }];
      return diagnosed(record, siteOf({}, { visits }));
    };
    const told = (of: ReturnType<typeof slight>) =>
      (['obstruction', 'misalignment-step', 'cleaned'] as const).map((cause) => stated(of, cause).length);
    expect(told(slight(2))).toEqual([1, 0, 0]);
    expect(told(slight(2, 'realigned'))).toEqual([0, 1, 1]);
    expect(told(slight(5))).toEqual([0, 1, 1]);
  });
  it('leaves what stands for longer to be told as knocked and put right', () => {
    const knocked = recordOf((t) => (t > at(3, 10) && t < at(12, 15) ? 0.5 : 1), { days: 20 });
    expect(stated(diagnosed(knocked), 'obstruction')).toEqual([]);
    const step = theOne(diagnosed(knocked), 'misalignment-step');
    expect([step.start, step.end, step.ongoing]).toEqual([at(3, 10) + 5 * minute, at(12, 15) - 5 * minute, false]);
  });
  it.each([
    ['that never came back', (t: number) => (t > at(5) ? 0.5 : 1)],
    ['that came back to another level', (t: number) => (t < at(5) ? 1 : t < at(5, 5) ? 0.5 : 0.8)],
    ['with a slow edge', (t: number) => 1 - 0.5 * rise(t, at(5), at(5, 4)) * (1 - rise(t, at(5, 6), at(5, 10)))],
    [
      'between two spells of light, which is the usual level',
      (t: number) =>
        Math.floor((t - at(0)) / (2 * minute * 720)) % 3 === 0 && (t - at(0)) % (24 * 60 * minute) < 60 * minute
          ? 1.25
          : 1,
    ],
    ['with an uneven bottom', (t: number) => (t > at(5) && t < at(5, 6) ? 0.6 + 0.2 * Math.sin(t / 3e6) : 1)],
  ])('finds none in a loss %s', (_, level) => expect(blocksOf(level)).toEqual([]));
  it.each(['smoke-like', 'condensation', 'building-movement'] as const)('finds none in %s', (cause) =>
    expect(findBlocks(viewed(typical[cause]()))).toEqual([]),
  );
});
