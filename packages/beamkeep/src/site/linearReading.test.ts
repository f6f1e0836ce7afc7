import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coveredShare, linearReading, readingOf } from './linearReading.js';
import { signalUnits } from './site.js';

describe('linearReading', () => {
  it('leaves what is proportional to received power', () => expect(linearReading(2131, 'counts')).toBe(2131));
  it('takes 10 dB for a tenth', () => expect(linearReading(-10, 'decibels')).toBeCloseTo(0.1, 15));
  it('takes 99.6 % obscuration for 0.4 % of the light', () =>
    expect(linearReading(99.6, 'obscuration')).toBeCloseTo(0.004, 15));
  it('missing stays missing', () => {
    for (const unit of signalUnits) expect(linearReading(Number.NaN, unit)).toBeNaN();
  });
  it('law: there and back', () =>
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 10, noNaN: true }), fc.constantFrom(...signalUnits), (power, unit) => {
        expect(linearReading(readingOf(power, unit), unit)).toBeCloseTo(power, 12);
      }),
      { seed: 7 },
    ));
});

describe('coveredShare', () => {
  it.each([
    [{ signalUnit: 'percent', cleanAir: 100, covered: 4 }, 0.04],
    [{ signalUnit: 'millivolts', cleanAir: 822, covered: 10.1 }, 10.1 / 822],
    [{ signalUnit: 'obscuration', cleanAir: 0, covered: 96 }, 0.04],
    [{ signalUnit: 'decibels', cleanAir: 0, covered: -20 }, 0.01],
    [{ signalUnit: 'decibels', cleanAir: -3, covered: -23 }, 0.01],
    [{ signalUnit: 'percent', cleanAir: 100 }, 0],
    [{ signalUnit: 'counts', covered: 17 }, 0],
  ] as const)('%j', (beam, share) => expect(coveredShare(beam)).toBeCloseTo(share, 12));
  it('takes a clean-air reading that the log told', () =>
    expect(coveredShare({ signalUnit: 'counts', covered: 17 }, 3400)).toBe(0.005));
});
