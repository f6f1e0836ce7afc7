import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alarmGrid } from './alarmGrid.js';
import { reached } from './blockWatch.js';
import { type Change, responder } from './responder.js';

const beam = {
  alarmThreshold: 35,
  faultThreshold: 90,
  alarmDelay: 10,
  faultDelay: 10,
  latching: false,
  hysteresis: 0,
};
const axes = {
  alarms: { thresholds: [6, 8, 12, 20, 35, 50, 70], delays: [0, 2, 5, 10, 30] },
  faults: { thresholds: [60, 80, 90, 95], delays: [0, 3, 10] },
};
const regular = { sampling: 'regular', intervalSeconds: 1 } as const;
const onChange = { sampling: 'on-change', intervalSeconds: 1 } as const;
type Sample = readonly [seconds: number, obscuration: number];

const gridOf = (samples: readonly Sample[], how: typeof regular | typeof onChange = regular) => {
  const counter = alarmGrid(beam, axes, how);
  for (const [seconds, obscuration] of samples) counter.feed(seconds * 1000, obscuration);
  return counter.result();
};
const counts = (grid: ReturnType<typeof gridOf>['alarms']) => grid.cells.map((row) => row.map(({ count }) => count));

/** The slow, plain way: a responder for each pair, whose signals count when ten minutes below the threshold armed it. */
function oneByOne(samples: readonly Sample[], how: typeof regular | typeof onChange, kind: 'fire' | 'fault') {
  const { thresholds, delays } = kind === 'fire' ? axes.alarms : axes.faults;
  return thresholds.map((threshold) =>
    delays.map((delay) => {
      const changes: Change[] = [];
      const settings =
        kind === 'fire'
          ? { ...beam, alarmThreshold: threshold, alarmDelay: delay }
          : { ...beam, alarmDelay: 1e9, faultThreshold: threshold, faultDelay: delay };
      const detector = responder(settings, { ...how, resets: [] }, (change) => changes.push(change));
      let armed = true;
      let below = Number.NEGATIVE_INFINITY;
      let above = false;
      let signals = 0;
      let seen = 0;
      const take = () => {
        for (; seen < changes.length; seen++)
          if (changes[seen]?.state === kind && armed) {
            signals += 1;
            armed = false;
          }
      };
      for (const [seconds, obscuration] of samples) {
        detector.advance(seconds * 1000 - 1);
        take();
        const now = reached(obscuration, threshold);
        if (now && !above && seconds - below >= 600) armed = true;
        if (!now && above) below = seconds;
        above = now;
        detector.feed(seconds * 1000, obscuration);
        take();
      }
      return signals;
    }),
  );
}

const samples = fc
  .array(
    fc.record({
      step: fc.oneof({ weight: 5, arbitrary: fc.constant(1) }, fc.constantFrom(2, 4, 7)),
      obscuration: fc.oneof(
        fc.constantFrom(0, 5, 7, 9, 12, 35, 40, 75, 91, 99),
        fc.double({ min: -3, max: 100, noNaN: true }),
      ),
      times: fc.oneof({ weight: 4, arbitrary: fc.integer({ min: 1, max: 14 }) }, fc.constant(620)),
    }),
    { maxLength: 25 },
  )
  .map((parts) => {
    const all: Sample[] = [];
    let at = 0;
    for (const { step, obscuration, times } of parts)
      for (let i = 0; i < times; i++) {
        at += times === 620 ? 1 : step;
        all.push([at, obscuration]);
      }
    return all;
  });

describe('alarmGrid', () => {
  it.each([regular, onChange])('law: counts what a responder for each pair would have given, %j', (how) =>
    fc.assert(
      fc.property(samples, (all) => {
        const grid = gridOf(all, how);
        expect(counts(grid.alarms)).toEqual(oneByOne(all, how, 'fire'));
        expect(counts(grid.faults)).toEqual(oneByOne(all, how, 'fault'));
      }),
      { seed: 5, numRuns: 60 },
    ),
  );

  it('counts a loss that dithers about a threshold once, and again after ten minutes below it', () => {
    const dither = (from: number): Sample[] => Array.from({ length: 90 }, (_, i) => [from + i, i % 15 < 12 ? 40 : 30]);
    const rest = (from: number, seconds: number): Sample[] => Array.from({ length: seconds }, (_, i) => [from + i, 1]);
    const short = [...rest(0, 9), ...dither(10), ...rest(100, 590), ...dither(690)];
    const long = [...rest(0, 9), ...dither(10), ...rest(100, 900), ...dither(1000)];
    const at35 = axes.alarms.thresholds.indexOf(35);
    expect(counts(gridOf(short).alarms)[at35]).toEqual([1, 1, 1, 1, 0]);
    expect(counts(gridOf(long).alarms)[at35]).toEqual([2, 2, 2, 2, 0]);
  });

  it('tells the yearly rate with its exact limits', () => {
    const counter = alarmGrid(
      beam,
      { ...axes, alarms: { thresholds: [35], delays: [10] } },
      { ...regular, intervalSeconds: 60 },
    );
    const year = 365.25 * 86_400;
    for (let t = 0; t <= year / 2; t += 60) counter.feed(t * 1000, t > 6000 && t < 9000 ? 50 : 1);
    const { years, alarms } = counter.result();
    expect(years).toBeCloseTo(0.5, 9);
    const [[cell] = []] = alarms.cells;
    expect(cell?.count).toBe(1);
    expect(cell?.perYear).toBeCloseTo(2, 9);
    expect(cell?.low).toBeCloseTo(2 * 0.0253, 3); // Garwood 1936, as usually tabled (from memory)
    expect(cell?.high).toBeCloseTo(2 * 5.572, 2);
  });

  it('leaves gaps out of the time observed', () => {
    const counter = alarmGrid(beam, axes, regular);
    for (const t of [0, 1, 2, 1000, 1001]) counter.feed(t * 1000, 1);
    expect(counter.result().years * 365.25 * 86_400).toBeCloseTo(3, 9);
  });

  it('lets a held value work until the log ends', () => {
    const counter = alarmGrid(beam, axes, onChange);
    counter.feed(0, 1);
    counter.feed(10_000, 40);
    expect(counts(counter.result(60_000).alarms)[axes.alarms.thresholds.indexOf(35)]).toEqual([1, 1, 1, 1, 1]);
  });

  it('of a log on change, the time observed goes on to where the log ends, and is never taken back', () => {
    const seconds = (until: number, how: typeof regular | typeof onChange = onChange) => {
      const counter = alarmGrid(beam, axes, how);
      counter.feed(0, 1);
      counter.feed(4_000, 40);
      return counter.result(until).years * 365.25 * 86_400;
    };
    expect(seconds(60_000)).toBeCloseTo(60, 9);
    expect(seconds(4_000)).toBeCloseTo(4, 9);
    expect(seconds(1_000)).toBeCloseTo(4, 9);
    expect(seconds(60_000, regular)).toBeCloseTo(4, 9);
  });

  describe('a blocked beam', () => {
    const every = (obscuration: number, from: number, to: number): Sample[] =>
      Array.from({ length: to - from + 1 }, (_, i) => [from + i, obscuration]);
    const none = axes.alarms.thresholds.map(() => [0, 0, 0, 0, 0]);
    const each = (row: readonly number[]) => axes.faults.thresholds.map(() => row);

    it('held in a log on change is a fault and no alarm, whether a line follows or the log ends', () => {
      const samples: Sample[] = [
        [0, 1],
        [5, 95],
      ];
      const followed = gridOf([...samples, [60, 1]], onChange);
      const counter = alarmGrid(beam, axes, onChange);
      for (const [seconds, obscuration] of samples) counter.feed(seconds * 1000, obscuration);
      for (const { alarms, faults } of [followed, counter.result(60_000)]) {
        expect(counts(alarms)).toEqual(none);
        expect(counts(faults)).toEqual(each([1, 1, 1]));
      }
    });

    it('is any other loss after a gap, for nobody knows that it stayed: fire', () => {
      const { alarms, faults } = gridOf([[0, 1], ...every(95, 1, 3), ...every(95, 103, 123)]);
      expect(counts(alarms)).toEqual(axes.alarms.thresholds.map(() => [1, 1, 1, 1, 0]));
      expect(counts(faults)).toEqual(each([1, 0, 0]));
    });

    it('that was told as a fault before the gap stays one', () => {
      const { alarms, faults } = gridOf([[0, 1], ...every(95, 1, 11), ...every(95, 111, 131)]);
      expect(counts(alarms)).toEqual(none);
      expect(counts(faults)).toEqual(each([1, 1, 1]));
    });
  });

  it('knows no rate without time', () => {
    const [[cell] = []] = alarmGrid(beam, axes, regular).result().alarms.cells;
    expect(cell).toEqual({ count: 0, perYear: Number.NaN, low: Number.NaN, high: Number.NaN });
  });

  it.each([
    [{ thresholds: [], delays: [1] }],
    [{ thresholds: [30, 20], delays: [1] }],
    [{ thresholds: [0, 20], delays: [1] }],
    [{ thresholds: [20], delays: [2, 1] }],
    [{ thresholds: [20], delays: [-1] }],
    [{ thresholds: [20, 20], delays: [1] }],
    [{ thresholds: [20, 101], delays: [1] }],
    [{ thresholds: [20], delays: [0, Number.POSITIVE_INFINITY] }],
  ])('refuses the axes %j', (alarms) =>
    expect(() => alarmGrid(beam, { ...axes, alarms }, regular)).toThrow(/of alarms must rise/),
  );

  it('takes a threshold of all light', () =>
    expect(alarmGrid(beam, { ...axes, faults: { thresholds: [100], delays: [0] } }, regular).result().years).toBe(0));
});
