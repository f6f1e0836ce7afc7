import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { recordOf } from '../../../../tests/diagnosis/kit.js';
import { day, hour } from '../columns/index.js';
import { median } from '../statistics/index.js';
import { cellAt, cut, middle, weightedMedian } from './cells.js';

describe('cut', () => {
  const { trace } = recordOf((t) => 1 - 0.1 * Math.sin(t / day), { days: 12, intervalSeconds: 300 });
  const cells = cut(trace, 300, 0);

  it('gives a log of some days cells of an hour, whose medians are those of their samples', () => {
    expect(cells.width).toBe(hour);
    expect(cells.length).toBe(12 * 24);
    for (const c of [0, 5, 287]) {
      expect(cells.level[c]).toBe(median(trace.level.slice(cells.row[c], cells.row[c + 1])));
    }
  });
  it('law: each row lies in the cell that says so, whatever the sampling, and a day holds a whole number of cells', () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 900 }),
        fc.integer({ min: 10, max: 400 }),
        fc.integer({ min: -12, max: 14 }),
        (intervalSeconds, rows, offset) => {
          const own = recordOf(() => 1, { days: (rows * intervalSeconds) / 86_400, intervalSeconds }).trace;
          const made = cut(own, intervalSeconds, offset * hour);
          expect((day / made.width) % 1).toBe(0);
          expect(made.row[0]).toBe(0);
          expect(made.row[made.length]).toBe(own.time.length);
          for (let c = 0; c < made.length; c++)
            for (let i = made.row[c] as number; i < (made.row[c + 1] as number); i++)
              expect(cellAt(made, own.time[i] as number)).toBe(c);
        },
      ),
      { seed: 1, numRuns: 30 },
    ));
  it('leaves masked rows out: a cell without others is missing', () => {
    const mask = new Uint8Array(trace.time.length);
    mask.fill(1, cells.row[7], cells.row[8]);
    const masked = cut(trace, 300, 0, mask);
    expect(masked.level[7]).toBeNaN();
    expect(masked.level[8]).toBe(cells.level[8]);
  });
  it('law: the middle of a cell lies in that cell', () => {
    for (let c = 0; c < cells.length; c++) expect(cellAt(cells, middle(cells, c))).toBe(c);
  });
});

describe('weightedMedian', () => {
  it('law: as the median of values written out as often as they weigh', () =>
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: -20, max: 20 }), fc.integer({ min: 1, max: 9 })), { minLength: 1 }),
        (pairs) => {
          const written = pairs.flatMap(([v, w]) => Array.from({ length: w }, () => v)).sort((a, b) => a - b);
          const got = weightedMedian(
            Float64Array.from(pairs, ([v]) => v),
            Float64Array.from(pairs, ([, w]) => w),
          );
          const [a, b] = [written[(written.length - 1) >> 1], written[written.length >> 1]] as [number, number];
          expect(got === a || got === b).toBe(true);
        },
      ),
      { seed: 1 },
    ));
  it('law: the order of the values does not matter', () =>
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.integer(), fc.integer({ min: 1, max: 9 })), { minLength: 1 }), (pairs) => {
        const of = (list: readonly (readonly [number, number])[]): number =>
          weightedMedian(
            Float64Array.from(list, ([v]) => v),
            Float64Array.from(list, ([, w]) => w),
          );
        expect(of([...pairs].reverse())).toBe(of(pairs));
      }),
      { seed: 2 },
    ));
});
