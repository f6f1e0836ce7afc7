import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jitterOneAxis, jitterTwoAxes, pointingError } from './jitter.js';
import { lobeLoss } from './lobe.js';

const sigma = fc.double({ min: 0.02, max: 1, noNaN: true });

describe('jitterOneAxis', () => {
  it('law: the mean of the lobe over normal angles, by adding up', () => {
    fc.assert(
      fc.property(fc.double({ min: -1, max: 1, noNaN: true }), sigma, (offset, jitter) => {
        let [level, loss, total] = [0, 0, 0];
        for (let z = -8; z <= 8; z += 0.05) {
          const weight = Math.exp((-z * z) / 2);
          const here = lobeLoss(offset + jitter * z, 0.5);
          level += weight * 10 ** (-here / 10);
          loss += weight * here;
          total += weight;
        }
        const found = jitterOneAxis(offset, jitter, 0.5);
        expect(found.meanTransmittance).toBeCloseTo(level / total, 8);
        expect(found.meanLoss).toBeCloseTo(loss / total, 8);
      }),
      { seed: 101 },
    );
  });
});

describe('jitterTwoAxes', () => {
  it('law: two axes without offset multiply', () => {
    fc.assert(
      fc.property(sigma, (jitter) => {
        const one = jitterOneAxis(0, jitter, 0.5);
        const two = jitterTwoAxes(jitter, 0.5);
        expect(two.meanTransmittance).toBeCloseTo(one.meanTransmittance ** 2, 12);
        expect(two.meanLoss).toBeCloseTo(2 * one.meanLoss, 10);
      }),
      { seed: 102 },
    );
  });
  it('never below nothing, always below the peak', () => {
    const { shareBelow } = jitterTwoAxes(0.1, 0.5);
    expect([shareBelow(-1), shareBelow(0), shareBelow(1), shareBelow(2)]).toEqual([0, 0, 1, 1]);
  });
});

describe('pointingError', () => {
  it('a pinhole catches the irradiance: 2 (a / w)^2 at the middle, w as its equivalent radius', () => {
    const found = pointingError(0.001, 0.25, 0.05);
    expect(found.peakFraction / (2 * (0.001 / 0.25) ** 2)).toBeCloseTo(1, 4);
    expect(found.equivalentBeamRadius).toBeCloseTo(0.25, 4);
  });
});
