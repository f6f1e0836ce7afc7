import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { day, hour } from '../columns/index.js';
import { harmonics } from '../statistics/index.js';
import { lobeLoss } from './lobe.js';
import { swayAim, swayHarmonics } from './sway.js';

const offset = fc.double({ min: -1, max: 1, noNaN: true });
const sway = fc.double({ min: 0.02, max: 1, noNaN: true });

describe('swayHarmonics and swayAim', () => {
  it('law: what a harmonic analysis of the swaying lobe finds, and no third harmonic', () => {
    const time = Float64Array.from({ length: 48 }, (_, i) => (i * hour) / 2);
    fc.assert(
      fc.property(offset, sway, (o, d) => {
        const loss = time.map((t) => lobeLoss(o + d * Math.cos((2 * Math.PI * t) / day), 0.7));
        const [first, second, third] = harmonics(time, loss, day, 3).harmonics;
        const expected = swayHarmonics(o, d, 0.7);
        expect(first?.amplitude).toBeCloseTo(expected.first, 9);
        expect(second?.amplitude).toBeCloseTo(expected.second, 9);
        expect(third?.amplitude).toBeCloseTo(0, 9);
      }),
      { seed: 91 },
    );
  });
  it('law: the aim comes back from the harmonics, in half-angles', () => {
    fc.assert(
      fc.property(offset, sway, (o, d) => {
        const { first, second } = swayHarmonics(o, d, 0.5);
        expect(swayAim(first, second).offset).toBeCloseTo(Math.abs(o) / 0.5, 8);
        expect(swayAim(first, second).sway).toBeCloseTo(d / 0.5, 9);
      }),
      { seed: 92 },
    );
  });
  it('no sway, no ratio; no second harmonic, no offset', () => {
    expect(swayHarmonics(0.3, 0, 0.5).ratio).toBeNaN();
    expect(swayAim(0, 0).offset).toBeNaN();
  });
});
