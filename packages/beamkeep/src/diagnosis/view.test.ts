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
