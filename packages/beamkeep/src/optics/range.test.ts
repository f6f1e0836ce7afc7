import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { geometricLoss, rangeLoss, retroreflection } from './range.js';

const distance = fc.double({ min: 1, max: 200, noNaN: true });

describe('rangeLoss', () => {
  it('law: by way of a third distance it is the same', () => {
    fc.assert(
      fc.property(distance, distance, distance, (a, b, c) => {
        const loss = (near: number, far: number) => rangeLoss(near, far, 'reflector-overfilled');
        expect(loss(a, b) + loss(b, c)).toBeCloseTo(loss(a, c), 9);
      }),
      { seed: 104 },
    );
  });
  it('law: what a reflector in a wide spot sends back falls by the overfilled law', () => {
    fc.assert(
      fc.property(distance, distance, (near, far) => {
        const back = (d: number) => retroreflection(1000, 700, 0.01, d).illuminanceAtReceiver;
        expect(10 * Math.log10(back(near) / back(far))).toBeCloseTo(rangeLoss(near, far, 'reflector-overfilled'), 9);
      }),
      { seed: 105 },
    );
  });
});

describe('geometricLoss', () => {
  it('law: once the spot has outgrown the receiver, twice as far costs 6.02 dB', () =>
    expect(geometricLoss(80, 10, 0.05) - geometricLoss(40, 10, 0.05)).toBeCloseTo(rangeLoss(40, 80, 'one-way'), 12));
  it('nothing at no distance', () => expect(geometricLoss(0, 10, 0.05)).toBe(0));
});
