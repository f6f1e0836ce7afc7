import type { Sourced } from './sourced.js';

/** Smallest response threshold that a beam detector may have. */
export const leastThreshold = {
  value: 0.4,
  unit: 'dB',
  source: 'EN 54-12, response threshold',
  seen: 'from memory',
  note: 'of the whole path: 8.8 % at any length',
} satisfies Sourced;

/** Largest over smallest threshold in the tests of repeatability, path length, supply, stray light and environment. */
export const thresholdRatio = {
  value: 1.6,
  unit: '1',
  source: 'EN 54-12, repeatability and the tests after it',
  seen: 'from memory',
  note: 'in decibels; the same ratio read in EN 54-7:2001, 5.2.3 and 5.3.3',
} satisfies Sourced;

/** Largest over mean threshold in the test of reproducibility. */
export const reproducibilityAbove = {
  value: 1.33,
  unit: '1',
  source: 'GB 4715-2024, point smoke detectors',
  clause: '5.7',
  edition: '2024',
  seen: 'read',
  note: 'the same in EN 54-7 and EN 54-12 from memory',
} satisfies Sourced;

/** Mean over smallest threshold in the test of reproducibility. */
export const reproducibilityBelow = {
  value: 1.5,
  unit: '1',
  source: 'GB 4715-2024, point smoke detectors',
  clause: '5.7',
  edition: '2024',
  seen: 'read',
  note: 'the same in EN 54-7 and EN 54-12 from memory',
} satisfies Sourced;

const rapidChange = 'EN 54-12:2002, rapid changes in attenuation';

/** A rapid partial loss: so deep, so fast, it is fire within so long. */
export const rapidPartialLoss = {
  loss: { value: 6, unit: 'dB', source: rapidChange, clause: '5.6', edition: '2002', seen: 'from memory' },
  within: { value: 1, unit: 's', source: rapidChange, clause: '5.6', edition: '2002', seen: 'from memory' },
  fireWithin: { value: 30, unit: 's', source: rapidChange, clause: '5.6', edition: '2002', seen: 'from memory' },
} satisfies Record<string, Sourced>;

/** A rapid deep loss: fire or fault within so long. */
export const rapidDeepLoss = {
  loss: { value: 10, unit: 'dB', source: rapidChange, clause: '5.6', edition: '2002', seen: 'from memory' },
  within: { value: 1, unit: 's', source: rapidChange, clause: '5.6', edition: '2002', seen: 'from memory' },
  signalWithin: { value: 60, unit: 's', source: rapidChange, clause: '5.6', edition: '2002', seen: 'from memory' },
} satisfies Record<string, Sourced>;

const slowChange = 'EN 54-7:2001, response to slowly developing fires';

/** Slowest rate that must still end in an alarm, as a share of the initial threshold an hour. */
export const slowestFireRate = {
  value: 0.25,
  unit: 'A/h',
  source: slowChange,
  clause: '4.8',
  edition: '2001',
  seen: 'from memory',
  note: 'heading and aim read; EN 54-12 believed alike. A: initial threshold, R: rate of loss',
} satisfies Sourced;

/** Time to alarm of a slow fire, in units of A/R. */
export const slowFireFactor = {
  value: 1.6,
  unit: 'A/R',
  source: slowChange,
  clause: '4.8',
  edition: '2001',
  seen: 'from memory',
  note: 'heading and aim read; EN 54-12 believed alike. A: initial threshold, R: rate of loss',
} satisfies Sourced;

/** What is added to the time to alarm of a slow fire. */
export const slowFireAllowance = {
  value: 100,
  unit: 's',
  source: slowChange,
  clause: '4.8',
  edition: '2001',
  seen: 'from memory',
  note: 'heading and aim read; EN 54-12 believed alike. A: initial threshold, R: rate of loss',
} satisfies Sourced;

/** How far compensation may raise the threshold, over its initial value in decibels. */
export const compensationRatio = {
  value: 1.6,
  unit: '1',
  source: slowChange,
  clause: '4.8',
  edition: '2001',
  seen: 'from memory',
  note: 'in decibels: 35 % may become 49.8 %, not 56 %. At the limit comes fault or alarm (EN 54-12:2002, 4.8, read)',
} satisfies Sourced;

/** Smallest response threshold of a point smoke detector. */
export const leastPointThreshold = {
  value: 0.05,
  unit: 'dB/m',
  source: 'EN 54-7:2001, repeatability',
  clause: '5.2.3',
  edition: '2001',
  seen: 'read',
  note: 'per metre of smoke, not of the path: 1.14 %/m',
} satisfies Sourced;

/** Shortest separation that the beam standard speaks of. */
export const leastSeparation = {
  value: 1,
  unit: 'm',
  source: 'EN 54-12:2015, scope',
  clause: '1',
  edition: '2015',
  seen: 'read',
} satisfies Sourced;

/** Filter that must not raise an alarm in the Chinese site test, within 30 s. */
export const quietFilter = {
  value: 0.9,
  unit: 'dB',
  source: 'GB 14003-2005, as quoted in a teaching text on test filters',
  edition: '2005',
  seen: 'read',
} satisfies Sourced;

/** Filter that must raise an alarm in the Chinese site test. */
export const alarmFilter = {
  value: 10,
  unit: 'dB',
  source: 'GB 14003-2005, as quoted in a teaching text on test filters',
  edition: '2005',
  seen: 'read',
} satisfies Sourced;

/** Smoke at the end of the smouldering test fires (TF2, TF3). */
export const smoulderingTestEnd = {
  value: 2,
  unit: 'dB/m',
  source: 'ISO 7240-7, end of test, as TCVN 7568-7:2015',
  seen: 'read',
} satisfies Sourced;
