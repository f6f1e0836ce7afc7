import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  at,
  chanceOf,
  dayOf,
  hourOf,
  left,
  pictured,
  recordOf,
  rise,
  siteOf,
} from '../../../../tests/diagnosis/kit.js';
import { heatOfDay, lobe, typical } from '../../../../tests/diagnosis/typical.js';
import { hour, minute } from '../columns/index.js';
import type { Step } from './steps.js';

const stepsOf = (level: (t: number) => number, days = 20): { steps: readonly Step[]; time: Float64Array } => {
  const { parts, view } = pictured(recordOf(level, { days }));
  return { steps: parts.steps, time: view.trace.time };
};

describe('findSteps', () => {
  it('law: finds a step to the sample, and its size', () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 3 * 288, max: 17 * 288 }),
        fc.double({ min: 0.05, max: 0.4, noNaN: true }),
        fc.boolean(),
        (row, lost, back) => {
          const when = at(0) + row * 5 * minute;
          const { steps, time } = stepsOf((t) => (t < when !== back ? 1 : 1 - lost));
          expect(steps).toHaveLength(1);
          const [step] = steps;
          expect(time[step?.row ?? 0]).toBe(when);
          expect((step?.loss ?? 0) * (back ? -1 : 1)).toBeCloseTo(-10 * Math.log10(1 - lost), 1);
        },
      ),
      { seed: 1, numRuns: 12 },
    ));
  it('finds a step under a sway and beside dirt', () => {
    const when = at(9, 10);
    const { steps, time } = stepsOf((t) =>
      left(lobe(0.3 + 0.1 * heatOfDay(t)) + 0.02 * (dayOf(t) + hourOf(t) / 24) + (t < when ? 0 : 0.8)),
    );
    expect(steps).toHaveLength(1);
    expect(Math.abs((time[steps[0]?.row ?? 0] ?? 0) - when)).toBeLessThanOrEqual(15 * minute);
  });
  it('finds two steps, down and up', () => {
    const { steps } = stepsOf((t) => (t > at(6, 10) && t < at(13, 15) ? 0.8 : 1));
    expect(steps.map(({ loss }) => Math.sign(loss))).toEqual([1, -1]);
  });
  it.each([
    ['a slope of a day', (t: number) => 1 - 0.2 * rise(t, at(8), at(9))],
    ['a slope of months', (t: number) => 1 - 0.01 * (dayOf(t) + hourOf(t) / 24)],
    ['a slope of six hours', (t: number) => 1 - 0.2 * rise(t, at(8), at(8, 6))],
    ['an object for two hours', (t: number) => (t > at(8, 9) && t < at(8, 11) ? 0.5 : 1)],
    ['a single sample', (t: number) => (t === at(8, 9) ? 0.2 : 1)],
    ['a sway', (t: number) => left(lobe(0.6 + 0.15 * heatOfDay(t)))],
    ['a smouldering fire', (t: number) => 1 - 0.3 * rise(t, at(8, 9), at(8, 11)) * (1 - rise(t, at(8, 13), at(8, 16)))],
    [
      'clouds that differ from day to day',
      (t: number) => left(lobe(0.5 + 0.2 * chanceOf(dayOf(t)) * Math.cos((hourOf(t) / 12) * Math.PI))),
    ],
  ])('finds none in %s', (_, level) => expect(stepsOf(level).steps).toEqual([]));
  it.each(['condensation', 'process-aerosol', 'ambient-light', 'electrical-noise', 'vibration', 'data-gap'] as const)(
    'finds none in %s',
    (cause) => expect(pictured(typical[cause]()).parts.steps).toEqual([]),
  );
  it('finds none in the noise of a coarse scale', () =>
    expect(
      pictured(
        recordOf(() => 0.905, { days: 20, noise: 0.004, quantum: 0.01 }),
        siteOf(),
      ).parts.steps,
    ).toEqual([]));
  it('keeps the day of daylight from being a step: hours long, deep and flat', () =>
    expect(stepsOf((t) => (hourOf(t) > 10 && hourOf(t) < 14 ? 0.8 : 1)).steps).toEqual([]));
  it('is not moved by a gap before it', () => {
    const when = at(9, 10);
    const { steps, time } = stepsOf((t) => (t > when - 2 * hour && t < when ? Number.NaN : t < when ? 1 : 0.8));
    expect(steps).toHaveLength(1);
    expect(time[steps[0]?.row ?? 0]).toBe(when);
  });
});
