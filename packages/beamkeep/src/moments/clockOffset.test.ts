import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hour, minute, type PanelEntry } from '../columns/index.js';
import { clockOffset, clockTolerance, fitOf } from './clockOffset.js';
import type { ExpectedSignal } from './expectedSignals.js';

const start = Date.parse('2027-03-01T00:00:00Z');
const day = 24 * hour;
const fire = (time: number, beam = 'B1'): ExpectedSignal => ({ beam, kind: 'fire', time });
const seen = ({ time, beam, kind }: ExpectedSignal, offset: number): PanelEntry => ({
  time: time + offset,
  beam,
  what: kind,
});
/** Signals at uneven times over some days. */
const some = (count: number): ExpectedSignal[] =>
  Array.from({ length: count }, (_, k) => fire(start + k * 1.37 * day + ((k * k * 7919) % 600) * minute));

describe('clockOffset', () => {
  it('is positive where the panel runs ahead', () => {
    const signals = some(6);
    const entries = signals.map((signal) => seen(signal, 140_000));
    expect(clockOffset(entries, signals, minute)).toEqual({ offset: 140_000, matched: 6, of: 6, spread: 0 });
  });
  it('takes the middle of what jitters, and tells how far it spreads', () => {
    const signals = some(9);
    const entries = signals.map((signal, k) => seen(signal, -90_000 + 1000 * (k - 4)));
    expect(clockOffset(entries, signals, minute)).toEqual({ offset: -90_000, matched: 9, of: 9, spread: 8000 });
  });
  it('finds a clock change that was missed, and another zone', () => {
    const signals = some(5);
    for (const hours of [1, -1, 7])
      expect(
        clockOffset(
          signals.map((signal) => seen(signal, hours * hour)),
          signals,
          minute,
        )?.offset,
      ).toBe(hours * hour);
  });
  it('is not led astray by entries that the log does not show, nor by signals that the panel did not list', () => {
    const signals = some(12);
    const strays = some(5).map(({ time }) => ({ time: time + 9.3 * hour, beam: 'B1', what: 'fire' }));
    const entries = [...signals.slice(0, 8).map((signal) => seen(signal, 20_000)), ...strays];
    expect(clockOffset(entries, signals, minute)).toMatchObject({ offset: 20_000, matched: 8 });
  });
  it('takes only signals of the kind and the beam; an entry without a beam is of any', () => {
    const signals = some(6);
    const other = signals.map((signal) => ({ ...signal, beam: 'B2', time: signal.time - 5 * minute }));
    const entries = signals.map((signal) => seen(signal, 30_000));
    expect(clockOffset(entries, [...signals, ...other], minute)?.offset).toBe(30_000);
    expect(clockOffset(entries, other, minute)?.offset).toBeUndefined();
    const ofAll = entries.map(({ time, what }) => ({ time, what }));
    expect(clockOffset(ofAll, signals, minute)?.offset).toBe(30_000);
    expect(
      clockOffset(
        entries.map((entry) => ({ ...entry, what: 'fault' })),
        signals,
        minute,
      ),
    ).toBeUndefined();
  });
  it('two signals days apart that agree to the second are enough, one is not', () => {
    const signals = [fire(start), fire(start + 40 * day)];
    const entries = signals.map((signal) => seen(signal, 140_000));
    expect(clockOffset(entries, signals, minute)?.offset).toBe(140_000);
    expect(clockOffset(entries.slice(1), signals, minute)).toBeUndefined();
    expect(clockOffset([], signals, minute)).toBeUndefined();
    expect(clockOffset(entries, [], minute)).toBeUndefined();
  });
  it('cannot be told where nothing belongs together', () => {
    // A generator of Park and Miller's kind: the times of the one know nothing of the other's.
    let state = 42;
    const random = () => {
      state = (state * 48_271) % 2_147_483_647;
      return state / 2_147_483_647;
    };
    let told = 0;
    for (let trial = 0; trial < 200; trial++) {
      const times = () => Array.from({ length: 20 }, () => start + Math.floor(random() * 60 * day));
      const entries = times().map((time) => ({ time, beam: 'B1', what: 'fire' }));
      if (
        clockOffset(
          entries,
          times()
            .sort((a, b) => a - b)
            .map((time) => fire(time)),
          minute,
        ) !== undefined
      )
        told++;
    }
    expect(told).toBeLessThanOrEqual(4); // 1 % allowed for each reach that is tried
  });
  it('stays quick and right where the list is long', () => {
    const signals = Array.from({ length: 5000 }, (_, k) => fire(start + k * 17 * minute + ((k * 7919) % 13) * minute));
    const entries = signals.map((signal) => seen(signal, 45_000));
    expect(clockOffset(entries, signals, minute)?.offset).toBe(45_000);
  });
  it('law: a clock set forward moves the distance by as much, and the order of the list does not matter', () => {
    const times = fc.uniqueArray(fc.integer({ min: 0, max: 400 }), { minLength: 4, maxLength: 12 });
    fc.assert(
      fc.property(times, fc.integer({ min: -600, max: 600 }), (hours, seconds) => {
        const signals = hours.map((h) => fire(start + h * 5.3 * hour)).sort((a, b) => a.time - b.time);
        const entries = signals.map((signal) => seen(signal, 1000 * seconds)).reverse();
        expect(clockOffset(entries, signals, minute)?.offset).toBe(1000 * seconds);
      }),
      { seed: 3, numRuns: 50 },
    );
  });
});

describe('fitOf', () => {
  it('counts what has its signal at a distance that is known otherwise', () => {
    const signals = some(4);
    const entries = signals.map((signal, k) => seen(signal, k === 3 ? 10 * minute : 2000 * k));
    expect(fitOf(2000, entries, signals, minute)).toEqual({ offset: 2000, matched: 3, of: 4, spread: 4000 });
    expect(fitOf(300_000, entries, signals, minute)).toMatchObject({ matched: 0, of: 4, spread: 0 });
  });
});

describe('clockTolerance', () => {
  it('is a minute, or the interval where that is longer', () => {
    expect(clockTolerance(1)).toBe(minute);
    expect(clockTolerance(900)).toBe(15 * minute);
    expect(clockTolerance(Number.NaN)).toBe(minute);
  });
});
