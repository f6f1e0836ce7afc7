import type { Sourced } from './sourced.js';

/*
 * What a threshold may be by standards that the room of response does not need, and the tolerances by which a
 * commissioning test is judged.
 */

const russianLine = 'NPB 82-99 and GOST R 53325, linear smoke detectors';

/** Thresholds that a beam detector may have in Russia. */
export const russianThreshold = {
  least: { value: 0.4, unit: 'dB', source: russianLine, seen: 'from memory' },
  most: { value: 5.2, unit: 'dB', source: russianLine, seen: 'from memory' },
} satisfies Record<string, Sourced>;

const chineseLine = 'GB 14003-2005, linear beam smoke detectors, response threshold';

/** Thresholds that a beam detector may have in China. */
export const chineseThreshold = {
  least: { value: 1, unit: 'dB', source: chineseLine, edition: '2005', seen: 'from memory' },
  most: { value: 10, unit: 'dB', source: chineseLine, edition: '2005', seen: 'from memory' },
} satisfies Record<string, Sourced>;

/** How long the quiet filter of the Chinese site test is held without an alarm. */
export const quietFilterHold = {
  value: 30,
  unit: 's',
  source: 'GB 14003-2005, as quoted in a teaching text on test filters',
  edition: '2005',
  seen: 'read',
} satisfies Sourced;

const performanceSpecification = '40 CFR 60 Appendix B, Performance Specification 1';

/** How far an instrument's reading of a test filter may lie from the filter's value. */
export const filterTolerance = {
  value: 3,
  unit: '% obscuration',
  source: performanceSpecification,
  clause: 'calibration error',
  seen: 'from memory',
  note: 'of smoke-stack monitors; no figure for beam detectors is known to us',
} satisfies Sourced;

/** How far a clean reading may wander between two checks. */
export const cleanDrift = {
  value: 2,
  unit: '% obscuration',
  source: performanceSpecification,
  clause: 'zero drift',
  seen: 'from memory',
  note: 'of smoke-stack monitors, in 24 h; also the shift of reading that an alignment aid must show',
} satisfies Sourced;

/** How far a cover by area may lie from the share that it covers. */
export const coverTolerance = {
  value: 5,
  unit: '% obscuration',
  source: 'own choice: a hand holds a cover to some millimetres, and few reflectors are lit evenly',
  seen: 'own choice',
} satisfies Sourced;

/** True smoke over threshold, both in decibels, from which a covered reading is refused. */
export const residueRatio = {
  value: 1.6,
  unit: '1',
  source: 'own choice: the ratio of thresholds within which EN 54-12 holds one detector (from memory)',
  seen: 'own choice',
} satisfies Sourced;

/** True smoke over threshold, both in decibels, from which a covered reading is cautioned against. */
export const residueCaution = {
  value: 1.1,
  unit: '1',
  source: 'own choice: a tenth more smoke than the threshold says is worth knowing',
  seen: 'own choice',
} satisfies Sourced;

/** Share of the margin of an aim that the movement of the structure may use. */
export const movementShare = {
  value: 0.5,
  unit: '1',
  source: 'own choice: half of the margin is left to dirt and to what was not thought of',
  seen: 'own choice',
} satisfies Sourced;

/** How much later than its delay a signal may come in a proof. */
export const signalAllowance = {
  value: 5,
  unit: 's',
  source: 'own choice: a panel scans its lines and people write times down within some seconds',
  seen: 'own choice',
} satisfies Sourced;

/** Loss by the aim that was left from which re-aiming is advised. */
export const flankLoss = {
  value: 0.5,
  unit: 'dB',
  source: 'own choice: a tenth of the light, at 0.4 half-angles, where a movement begins to cost in proportion',
  seen: 'own choice',
} satisfies Sourced;
