import { day, hour, minute, type Trace } from 'beamkeep/columns';
import { describe, expect, it } from 'vitest';
import { peaksOf, spectrumOf } from './spectrumOf.js';
import { testTrace } from './testTrace.js';

/** A sample each ten minutes for so many days, with a loss of our own [dB]. */
function trace(days: number, loss: (time: number) => number): Trace {
  const time = Array.from({ length: days * 144 }, (_, i) => i * 10 * minute);
  return testTrace(
    time,
    time.map((instant) => 10 ** (-loss(instant) / 10)),
  );
}

describe('spectrumOf', () => {
  it('tells a daily swing and its half by their size', () => {
    const wave = (instant: number): number =>
      0.5 + 0.4 * Math.sin((2 * Math.PI * instant) / day) + 0.1 * Math.sin((2 * Math.PI * instant) / (12 * hour));
    const spectrum = spectrumOf(trace(64, wave), { from: 0, to: 64 * day }, 10 * minute);
    const [first, second] = peaksOf(spectrum, 2);
    expect((first?.period ?? 0) / day).toBeCloseTo(1, 1);
    expect(first?.swing).toBeGreaterThan(0.3);
    expect(first?.swing).toBeLessThan(0.41);
    expect((second?.period ?? 0) / day).toBeCloseTo(0.5, 1);
    expect(spectrum.step).toBe(10 * minute);
  });

  it('finds nothing in a steady level', () => {
    expect(
      peaksOf(
        spectrumOf(
          trace(30, () => 0.2),
          { from: 0, to: 30 * day },
          10 * minute,
        ),
        3,
      ),
    ).toEqual([]);
  });

  it('a stretch too short has no spectrum', () => {
    expect(
      spectrumOf(
        trace(1, () => 0),
        { from: 0, to: hour },
        10 * minute,
      ).period.length,
    ).toBe(0);
  });
});
