import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reachOf } from './reach.js';

describe('reachOf', () => {
  it('a residue of half the light makes a threshold of 35 % need 70 %: refused', () => {
    const reach = reachOf(35, 'smoke', 50);
    expect(reach).toMatchObject({ reachable: 'yes', trueObscuration: 70, verdict: 'refuse' });
    expect(reach.decibels).toBeCloseTo(1.8709, 4);
    expect(reach.trueDecibels).toBeCloseTo(5.2288, 4);
    expect(reach.timesTheSmoke).toBeCloseTo(2.795, 3);
  });
  it('a threshold beyond the largest obscuration is never reached', () => {
    const reach = reachOf(35, 'smoke', 30);
    expect(reach).toMatchObject({ reachable: 'no', verdict: 'refuse' });
    expect(reach.trueObscuration).toBeNaN();
  });
  it('a threshold within the limits of the measurement is doubtful, and refused', () =>
    expect(reachOf(50, 'smoke', 50.2, 49.8, 50.6)).toMatchObject({ reachable: 'doubtful', verdict: 'refuse' }));
  it('without a residue a threshold is what it says', () =>
    expect(reachOf(35, 'smoke', 100)).toMatchObject({ trueObscuration: 35, timesTheSmoke: 1, verdict: 'fit' }));
  it('a blocked beam asks only whether darkness reaches the threshold', () => {
    expect(reachOf(90, 'block', 92)).toMatchObject({ reachable: 'yes', verdict: 'fit' });
    expect(reachOf(90, 'block', 89)).toMatchObject({ reachable: 'no', verdict: 'refuse' });
    expect(reachOf(100, 'block', 100)).toMatchObject({ reachable: 'yes', timesTheSmoke: 1, verdict: 'fit' });
  });
  it('law: more residue never needs less smoke', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 60, noNaN: true }),
        fc.double({ min: 61, max: 99, noNaN: true }),
        (a, largest) => {
          const more = reachOf(a, 'smoke', largest);
          const less = reachOf(a, 'smoke', largest + 1);
          return more.trueObscuration >= less.trueObscuration && more.trueObscuration >= a;
        },
      ),
      { seed: 4 },
    ));
});
