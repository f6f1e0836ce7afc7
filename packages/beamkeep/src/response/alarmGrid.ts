import { day, UsageError } from '../columns/index.js';
import type { Beam, Sampling } from '../site/index.js';
import { type BlockWatch, blockWatch, clearBelow, isFast, reached } from './blockWatch.js';
import { poissonInterval } from './poissonInterval.js';
import { isGap } from './responder.js';
import { runCounter } from './runCounter.js';

/*
 * What each choice of threshold and delay would have cost on a site's own log: alarms for every pair of alarm threshold
 * and alarm delay, faults for every pair of fault threshold and fault delay, all in one pass over the samples.
 *
 * The rules are those of the responder: the conditions, the blocked beam, the gap that stops a delay. Two things differ:
 * nothing latches, and a pair that gave a signal gives the next only after ten minutes below its threshold. While alarms
 * are counted the beam's own fault settings say what is a blocked beam; while faults are counted its own alarm threshold
 * says what is clear.
 */

const year = 365.25 * day;

/** Thresholds and delays to be tried. */
export interface GridAxes {
  /** Obscuration [%], rising. */
  readonly thresholds: readonly number[];
  /** [s], rising */
  readonly delays: readonly number[];
}

/** What a pair of threshold and delay would have given. */
export interface GridCell {
  /** Signals in the log. */
  readonly count: number;
  /** Signals a year; NaN where no time was observed. */
  readonly perYear: number;
  /** Exact limits of the yearly rate, if signals come by chance [1/year]. */
  readonly low: number;
  readonly high: number;
}

/** A grid: a row a threshold, a column a delay. */
export interface Grid extends GridAxes {
  readonly cells: readonly (readonly GridCell[])[];
}

/** Alarms and faults that other settings would have given. */
export interface AlarmGrid {
  /** Time observed, gaps left out [years of 365.25 days]. */
  readonly years: number;
  readonly confidence: number;
  readonly alarms: Grid;
  readonly faults: Grid;
}

/** Counts a grid, fed sample by sample. */
export interface GridCounter {
  /**
   * Takes the next sample.
   *
   * @param time instant [ms], not before the last one
   * @param obscuration as the equipment sees it [%]; NaN is missing and changes nothing
   * @param joined whether samples between the last one and this are only left out: no gap, however long
   */
  feed(time: number, obscuration: number, joined?: boolean): void;
  /** The grid up to the last sample, or in a log on change up to an instant [ms] at which it still goes on. */
  result(until?: number): AlarmGrid;
}

/**
 * A counter of the alarms and faults that other settings would have given.
 *
 * @param beam of the site: its fault settings say what is blocked, its alarm threshold what is clear
 * @param axes alarm thresholds and delays, fault thresholds and delays to be tried
 * @param circumstances sampling of the site, and the usual interval between samples [s]
 * @param confidence of the limits of the yearly rates
 * @throws UsageError for axes that are empty, do not rise, or leave their range
 */
export function alarmGrid(
  beam: Pick<Beam, 'alarmThreshold' | 'faultThreshold' | 'faultDelay'>,
  axes: { readonly alarms: GridAxes; readonly faults: GridAxes },
  { sampling, intervalSeconds }: { readonly sampling: Sampling; readonly intervalSeconds: number },
  confidence = 0.95,
): GridCounter {
  checkAxes('alarms', axes.alarms);
  checkAxes('faults', axes.faults);
  const holds = sampling === 'on-change';
  const alarms = alarmRuns(beam, axes.alarms, holds);
  const faults = faultRuns(beam, axes.faults, holds);
  let last = Number.NaN;
  let observed = 0;

  return {
    feed(time, obscuration, joined = false) {
      if (Number.isNaN(obscuration)) return;
      const gap = !holds && !joined && isGap(time - last, intervalSeconds);
      if (gap) {
        alarms.gap(last);
        faults.gap();
      } else if (!Number.isNaN(last)) observed += time - last;
      if (holds) {
        alarms.holdBefore(time);
        faults.holdBefore(time);
      }
      alarms.feed(time, obscuration);
      faults.feed(time, obscuration);
      last = time;
    },
    result(until = last) {
      if (holds && until > last) {
        alarms.holdUntil(until);
        faults.holdUntil(until);
      }
      const years = (observed + (holds && until > last ? until - last : 0)) / year;
      const grid = ({ thresholds, delays }: GridAxes, counts: readonly Uint32Array[]): Grid => ({
        thresholds,
        delays,
        cells: counts.map((row) => Array.from(row, (count) => cell(count, years, confidence))),
      });
      return {
        years,
        confidence,
        alarms: grid(axes.alarms, alarms.counts),
        faults: grid(axes.faults, faults.counts),
      };
    },
  };
}

function cell(count: number, years: number, confidence: number): GridCell {
  if (!(years > 0)) return { count, perYear: Number.NaN, low: Number.NaN, high: Number.NaN };
  const { low, high } = poissonInterval(count, confidence);
  return { count, perYear: count / years, low: low / years, high: high / years };
}

function checkAxes(name: string, { thresholds, delays }: GridAxes): void {
  const rises = (values: readonly number[]) =>
    values.length > 0 && values.every((value, i) => i === 0 || value > (values[i - 1] as number));
  if (!rises(thresholds) || !thresholds.every((threshold) => threshold > 0 && threshold <= 100))
    throw new UsageError(`alarmGrid: the thresholds of ${name} must rise, above 0 and at most 100 %`);
  if (!rises(delays) || !delays.every((delay) => delay >= 0 && Number.isFinite(delay)))
    throw new UsageError(`alarmGrid: the delays of ${name} must rise, from 0 s`);
}

/** Runs of the condition of one kind of signal. */
interface Runs {
  feed(time: number, obscuration: number): void;
  gap(lastTime?: number): void;
  holdBefore(time: number): void;
  holdUntil(time: number): void;
  readonly counts: readonly Uint32Array[];
}

const inMilliseconds = (delays: readonly number[]) => delays.map((delay) => Math.round(delay * 1000));

/** How many of the rising thresholds an obscuration has come to, from how many the last one had. */
function passedBy(obscuration: number, thresholds: readonly number[], before: number): number {
  let passed = before;
  while (passed < thresholds.length && reached(obscuration, thresholds[passed] as number)) passed++;
  while (passed > 0 && !reached(obscuration, thresholds[passed - 1] as number)) passed--;
  return passed;
}

function alarmRuns(
  { faultThreshold, faultDelay }: Pick<Beam, 'faultThreshold' | 'faultDelay'>,
  { thresholds, delays }: GridAxes,
  holds: boolean,
): Runs {
  const runs = runCounter(thresholds.length, inMilliseconds(delays));
  const faultWait = Math.round(faultDelay * 1000);
  // Thresholds with the same idea of "clear" share a watch: all from 10 % on, and each below for itself.
  const watches = new Map<number, BlockWatch>();
  const watchOf = thresholds.map((threshold) => {
    const clear = clearBelow(threshold);
    const watch = watches.get(clear) ?? blockWatch(clear, faultThreshold, holds);
    watches.set(clear, watch);
    return watch;
  });
  const distinct = [...watches.values()];
  let passed = 0;

  return {
    feed(time, obscuration) {
      for (const watch of distinct) watch.feed(time, obscuration);
      const before = passed;
      passed = passedBy(obscuration, thresholds, before);
      for (let row = passed; row < before; row++) {
        runs.fall(row, time);
        runs.stop(row);
      }
      for (let row = before; row < passed; row++) runs.rise(row, time);
      for (let row = 0; row < passed; row++) {
        if (watchOf[row]?.memory.blocked) runs.stop(row);
        else runs.hold(row, time);
      }
    },
    gap(lastTime = Number.NaN) {
      for (let row = 0; row < passed; row++) runs.stop(row);
      for (const watch of distinct) if (!(lastTime - watch.memory.since >= faultWait)) watch.forget();
    },
    holdBefore(time) {
      for (let row = 0; row < passed; row++) runs.holdBefore(row, time);
    },
    holdUntil(time) {
      for (let row = 0; row < passed; row++) if (!watchOf[row]?.memory.blocked) runs.hold(row, time);
    },
    counts: runs.counts,
  };
}

function faultRuns(
  { alarmThreshold }: Pick<Beam, 'alarmThreshold'>,
  { thresholds, delays }: GridAxes,
  holds: boolean,
): Runs {
  const runs = runCounter(thresholds.length, inMilliseconds(delays));
  const clear = clearBelow(alarmThreshold);
  const blocked = new Uint8Array(thresholds.length);
  let passed = 0;
  let passedSinceClear = 0;
  let lastClear = Number.NEGATIVE_INFINITY;
  let wasClear = false;

  return {
    feed(time, obscuration) {
      if (holds && wasClear) lastClear = time;
      const before = passed;
      passed = passedBy(obscuration, thresholds, before);
      for (let row = passed; row < before; row++) {
        runs.fall(row, time);
        runs.stop(row);
        blocked[row] = 0;
      }
      for (let row = before; row < passed; row++) runs.rise(row, time);
      for (let row = passedSinceClear; row < passed; row++) if (isFast(time - lastClear, holds)) blocked[row] = 1;
      passedSinceClear = Math.max(passedSinceClear, passed);
      for (let row = 0; row < passed; row++) if (blocked[row] === 1) runs.hold(row, time);
      wasClear = !reached(obscuration, clear);
      if (wasClear) {
        lastClear = time;
        passedSinceClear = 0;
      }
    },
    gap() {
      for (let row = 0; row < passed; row++) {
        runs.stop(row);
        blocked[row] = 0;
      }
    },
    holdBefore(time) {
      for (let row = 0; row < passed; row++) runs.holdBefore(row, time);
    },
    holdUntil(time) {
      for (let row = 0; row < passed; row++) if (blocked[row] === 1) runs.hold(row, time);
    },
    counts: runs.counts,
  };
}
