import type { Sourced } from './sourced.js';

const habit = 'common practice, no source';

/** Obscuration that means smoke, where a site file names none. */
export const usualAlarmThreshold = {
  value: 35,
  range: [25, 50],
  unit: '%',
  source: habit,
  seen: 'common practice',
} satisfies Sourced;

/** Obscuration treated as a blocked beam, where a site file names none. */
export const usualFaultThreshold = { value: 90, unit: '%', source: habit, seen: 'common practice' } satisfies Sourced;

/** How long smoke must hold. */
export const usualAlarmDelay = { value: 10, unit: 's', source: habit, seen: 'common practice' } satisfies Sourced;

/** How long a blocked beam must hold. */
export const usualFaultDelay = { value: 10, unit: 's', source: habit, seen: 'common practice' } satisfies Sourced;

/** Blocked beam: obscuration from below which the loss must start. */
export const blockedFrom = { value: 10, unit: '%', source: habit, seen: 'common practice' } satisfies Sourced;

/** Blocked beam: longest time from there to the fault threshold. */
export const blockedWithin = {
  value: 2,
  unit: 's',
  source: habit,
  seen: 'common practice',
  note: 'thin on long paths: measured smoke took 10 to 90 % in 5.4 s over 100 m of smoke (see smoke curves)',
} satisfies Sourced;

/** Gap that stops a delay, in sampling intervals. */
export const stoppingGap = { value: 5, unit: 'intervals', source: habit, seen: 'common practice' } satisfies Sourced;
