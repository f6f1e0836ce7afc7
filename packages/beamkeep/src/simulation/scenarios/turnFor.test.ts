import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aimLoss, gaussianLobe } from '../lobe.js';
import { swingFor, turnFor } from './turnFor.js';

const level = (offset: readonly [number, number], direction: number, turn: number) =>
  10 **
  ((aimLoss(gaussianLobe, ...offset) -
    aimLoss(gaussianLobe, offset[0] + turn * Math.cos(direction), offset[1] + turn * Math.sin(direction))) /
    10);

describe('turnFor', () => {
  it('turns one half-angle from the peak to lose half', () => {
    expect(turnFor(gaussianLobe, [0, 0], 1, 0.5)).toBeCloseTo(1, 6);
  });

  it('law: a turn loses what was asked, from any offset, in any direction', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.8, max: 0.8, noNaN: true }),
        fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
        fc.double({ min: 0.02, max: 0.6, noNaN: true }),
        (offset, direction, lost) => {
          const turn = turnFor(gaussianLobe, [offset, 0], direction, lost);
          expect(1 - level([offset, 0], direction, turn)).toBeCloseTo(lost, 6);
        },
      ),
      { seed: 3 },
    );
  });
});

describe('swingFor', () => {
  it('moves the level by what was asked', () => {
    const swing = swingFor(gaussianLobe, [0.6, 0], 0, 0.08);
    expect(level([0.6, 0], 0, -swing / 2) - level([0.6, 0], 0, swing / 2)).toBeCloseTo(0.08, 6);
  });
});
