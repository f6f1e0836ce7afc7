import { describe, expect, it } from 'vitest';
import { at, left, normalOf, pictured, recordOf, rise, type Sampled } from '../../../../tests/diagnosis/kit.js';
import { second } from '../columns/index.js';

/** What the longest dip of the afternoon of day 3 is sorted as. */
function afternoonIs(level: (t: number) => number, sampled: Partial<Sampled> = {}) {
  const { excursions, kind } = pictured(recordOf(level, { days: 8, intervalSeconds: 30, ...sampled }));
  const [longest] = excursions
    .filter(({ sign, start }) => sign === 1 && start > at(3, 15) && start < at(3, 20))
    .sort((a, b) => b.deepSamples - a.deepSamples);
  return longest && kind.get(longest);
}

/** A fire that smoulders and clears, from 17:00 of day 3 or of another [dB]. */
const smoulders = (lost: number, t: number, date = 3) =>
  lost * rise(t, at(date, 17), at(date, 18)) * (1 - rise(t, at(date, 18), at(date, 19)));

/** Every tenth sample or so from 16:00 to 21:00 of a day, to either side, share of clean air. */
function spikes(t: number, date = 3): number {
  const n = Math.round(t / second);
  const on = t > at(date, 16) && t < at(date, 21) && Math.abs(normalOf(n, 4)) > 1.8;
  return on ? 0.15 * Math.sign(normalOf(n, 9)) : 0;
}

describe('an uneven dip of many samples', () => {
  it('is no noise amid spikes of both signs, where it goes one course', () =>
    expect(afternoonIs((t) => left(smoulders(0.4, t)) + spikes(t))).toBe('smoke'));
  it('is no noise where noise alone makes it uneven', () =>
    expect(
      afternoonIs((t) => left(0.25 * rise(t, at(3, 17), at(3, 18)) * (1 - rise(t, at(3, 18), at(3, 18.7)))), {
        days: 6,
        noise: 0.014,
      }),
    ).toBe('smoke'));
  it.each([
    [0.2, 0.008, 240],
    [0.3, 0.012, 240],
    [0.2, 0.012, 300],
    [0.4, 0.022, 300],
  ])('is no noise where ten samples show it: %d dB in a noise of %d, every %d s', (lost, noise, intervalSeconds) => {
    const fire = (t: number) => left(lost * rise(t, at(3, 17), at(3, 18)) * (1 - rise(t, at(3, 18), at(3, 18.7))));
    expect(afternoonIs(fire, { days: 6, noise, intervalSeconds })).toBe('smoke');
  });
  it('may be noise where noise reaches as far by chance', () => {
    const fire = (t: number) => left(0.12 * rise(t, at(3, 17), at(3, 17.5)) * (1 - rise(t, at(3, 17.5), at(3, 18))));
    expect(afternoonIs(fire, { days: 6, noise: 0.01, intervalSeconds: 300 })).toBe('rough');
  });
  it('may be noise where it comes with it on other days', () => {
    const days = [3, 4, 5, 6];
    const all = (t: number) => days.reduce((sum, date) => sum + smoulders(0.4, t, date), 0);
    expect(afternoonIs((t) => left(all(t)) + days.reduce((sum, date) => sum + spikes(t, date), 0))).toBe('rough');
  });
});
