import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { recordOf, siteOf, viewed } from '../../../../tests/diagnosis/kit.js';
import { levelOf, lossOf, view } from './view.js';

describe('loss and level', () => {
  it('law: each undoes the other', () =>
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 1.5, noNaN: true }), (level) => {
        expect(levelOf(lossOf(level))).toBeCloseTo(level, 12);
      }),
      { seed: 1 },
    ));
  it('half of the light is 3.01 dB, none is told as 40 dB', () => {
    expect(lossOf(0.5)).toBeCloseTo(3.0103, 4);
    expect([lossOf(0), lossOf(-0.1)]).toEqual([40, 40].map((x) => expect.closeTo(x, 9)));
  });
});

describe('view', () => {
  it('spans the samples', () => {
    const record = recordOf(() => 0.5, { days: 1, noise: 0 });
    const made = viewed(record);
    expect([made.from, made.to, made.interval]).toEqual([record.trace.time[0], record.trace.time.at(-1), 300_000]);
    expect(made.loss[7]).toBeCloseTo(3.0103, 4);
  });
  it('of a log on change holds the rows that the logger took, not those that are held between them', () => {
    // A logger that looks every quarter of an hour, whose value is repeated every minute.
    const quarter = (t: number): number => Math.floor(t / 900_000) % 3;
    const held = { ...recordOf((t) => 0.9 + 0.01 * quarter(t), { days: 1, intervalSeconds: 60, noise: 0 }) };
    const record = { ...held, intervalSeconds: 900 };
    const onChange = viewed(record, siteOf({}, { sampling: 'on-change' }));
    const ends = [record.trace.time[0], record.trace.time.at(-1)];
    expect([...onChange.trace.time.subarray(0, 3)].map((t) => t - onChange.from)).toEqual([0, 900_000, 1_800_000]);
    expect([onChange.from, onChange.to]).toEqual(ends);
    expect(viewed(record).trace).toBe(record.trace);
    // What stands unchanged for long is still said often enough for the middle of an hour.
    const still = viewed(
      { ...recordOf(() => 0.9, { days: 1, intervalSeconds: 60, noise: 0 }), intervalSeconds: 7200 },
      siteOf({}, { sampling: 'on-change' }),
    );
    expect(still.trace.time.length).toBeGreaterThan(3 * 24);
  });
  it('is none of a record without a sample', () => {
    const site = siteOf();
    const [beam] = site.beams;
    expect(
      beam &&
        view(
          recordOf(() => Number.NaN, { days: 1 }),
          beam,
          site,
        ),
    ).toBeUndefined();
  });
});
