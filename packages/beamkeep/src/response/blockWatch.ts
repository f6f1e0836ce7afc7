import { blockedFrom, blockedWithin } from '../numbers/index.js';

/*
 * Whether a loss is a blocked beam: from the last sample that was clear to the first at or above the fault threshold in
 * at most 2 s, and then for as long as it stays there (common practice, no source). A loss that comes slower, that
 * stops half way, or that comes again without clear air in between is no blocked beam.
 */

/** Longest time from clear to total of a blocked beam [ms]. */
const fastestBlock = blockedWithin.value * 1000;

/** What rounding in the conversion of units may take off an obscuration [%]. */
const rounding = 1e-9;

/** Whether an obscuration has come to a threshold, up to rounding [%]; false for a missing one. */
export const reached = (obscuration: number, threshold: number): boolean => obscuration >= threshold - rounding;

/**
 * What "clear" means under an alarm threshold: below 10 %, and below the threshold itself where that is lower. A loss
 * that already counts as smoke is not the clear air from which an object blocks a beam.
 */
export const clearBelow = (alarmThreshold: number): number => Math.min(blockedFrom.value, alarmThreshold);

/**
 * Whether a loss came fast enough for a blocked beam.
 *
 * @param difference from the last clear sample to the first total one [ms]
 * @param holds in a log on change the beam is clear until its next line, and there no longer: less than 2 s, then
 */
export const isFast = (difference: number, holds: boolean): boolean =>
  holds ? difference < fastestBlock : difference <= fastestBlock;

/** What a watch remembers: plain data. */
export interface BlockMemory {
  /** The last usable sample [ms, %]; NaN before the first. */
  readonly time: number;
  readonly obscuration: number;
  /** Until when the beam was last known to be clear [ms]. */
  readonly lastClear: number;
  /** Whether the loss has been total since then. */
  readonly totalSinceClear: boolean;
  /** Whether the beam is blocked, and since when [ms]. */
  readonly blocked: boolean;
  readonly since: number;
  /** Steps from clear to total between two samples too far apart to show whether it was fast, and the first [ms]. */
  readonly unshownSteps: number;
  readonly firstUnshownStep: number;
}

/** Watches one beam, sample by sample. */
export interface BlockWatch {
  /** Takes a usable sample and tells whether the beam is blocked. */
  feed(time: number, obscuration: number): boolean;
  /** Says that the loss is not shown to have stayed: it no longer counts as a blocked beam. */
  forget(): void;
  readonly memory: BlockMemory;
}

const untouched: BlockMemory = {
  time: Number.NaN,
  obscuration: Number.NaN,
  lastClear: Number.NEGATIVE_INFINITY,
  totalSinceClear: false,
  blocked: false,
  since: Number.NaN,
  unshownSteps: 0,
  firstUnshownStep: Number.NaN,
};

/**
 * A watch for a blocked beam.
 *
 * @param clear obscuration below which the beam is clear [%]
 * @param total obscuration from which the loss is total [%]
 * @param holds whether a value holds until the next sample (a log on change): then the beam is clear until that sample
 * @param carried memory of the watch over the part of the log before this one
 */
export function blockWatch(clear: number, total: number, holds: boolean, carried = untouched): BlockWatch {
  const memory: { -readonly [K in keyof BlockMemory]: BlockMemory[K] } = { ...carried };
  return {
    feed(time, obscuration) {
      const wasClear = memory.obscuration < clear - rounding;
      if (holds && wasClear) memory.lastClear = time;
      if (!reached(obscuration, total)) {
        memory.blocked = false;
        if (!reached(obscuration, clear)) {
          memory.lastClear = time;
          memory.totalSinceClear = false;
        }
      } else if (!memory.totalSinceClear) {
        memory.totalSinceClear = true;
        if (isFast(time - memory.lastClear, holds)) {
          memory.blocked = true;
          memory.since = time;
        } else if (wasClear) {
          if (memory.unshownSteps === 0) memory.firstUnshownStep = time;
          memory.unshownSteps += 1;
        }
      }
      memory.time = time;
      memory.obscuration = obscuration;
      return memory.blocked;
    },
    forget() {
      memory.blocked = false;
    },
    memory,
  };
}
