import {
  blockedWithin,
  cleanDrift,
  coverTolerance,
  filterTolerance,
  type Sourced,
  signalAllowance,
} from '../../numbers/index.js';
import type { BasisOut } from './commissioningRecord.js';

/*
 * Where each number of a record comes from: formula and source, by key. The page draws its footnotes from here, so that
 * no number stands in it without one.
 */

const cited = (figure: Sourced): Pick<BasisOut, 'source' | 'seen'> => ({
  source: `${figure.source}${'clause' in figure && figure.clause !== undefined ? `, ${figure.clause}` : ''}${
    'note' in figure && figure.note !== undefined ? ` (${figure.note})` : ''
  }`,
  seen: figure.seen,
});

/** Every basis by its key. */
export const bases = {
  setting: {
    says: 'setting of the equipment',
    formula: 'as written in the site file; defaults in use are named under "assumed"',
    source: 'site file of this record',
    seen: 'as given',
  },
  path: {
    says: 'optical path',
    formula: 'twice the separation of a reflective beam, once that of an end-to-end one',
    source: 'the light crosses the smoke on the way out and on the way back; exponent of path: 40 CFR 86.884-14(a)',
    seen: 'derived',
  },
  units: {
    says: 'threshold in other units',
    formula: 'loss [dB] = -10 log10(1 - percent/100); per metre: over the optical path; per foot: over path / 0.3048 m',
    source: 'Beer-Lambert; CFAST Technical Reference Guide, Visibility; FDS Technical Reference Guide, Smoke Detectors',
    seen: 'read',
  },
  visibility: {
    says: 'visibility of a sign, if even smoke along the whole path is the only cause',
    formula: '3 / extinction for a reflecting, 8 / extinction for a light-emitting sign, carried to 633 nm',
    source: 'CIBSE Guide E, eq. 10.7; wavelength law from memory (Widmann 2003)',
    seen: 'read',
  },
  dirt: {
    says: 'smoke that alarms under dirt',
    formula: 'losses in decibels add: smoke = threshold - dirt, both in dB',
    source: 'Beer-Lambert',
    seen: 'derived',
  },
  compensation: {
    says: 'highest threshold that compensation may reach',
    formula: '1.6 times the threshold at commissioning, in dB',
    source:
      'EN 54-7:2001, 4.8; EN 54-12 believed alike. That the limit ends in a fault or an alarm: EN 54-12:2002, 4.8 (read)',
    seen: 'from memory',
  },
  lobe: {
    says: 'lobe of the scan',
    formula: 'level = floor + peak 2^-(r^power), r in half-angles; robust least squares; limits 95 %',
    source: 'half power by definition; Gaussian near the peak: antenna engineering, 12 (angle / full width)^2 dB',
    seen: 'read',
  },
  offset: {
    says: 'turn off the peak',
    formula: 'angle where the head was left, less the fitted centre',
    source: 'the scan of this record',
    seen: 'derived',
  },
  aimLoss: {
    says: 'loss by the aim',
    formula: '3.0103 r^power dB, r the turn off the peak in half-angles',
    source: 'half power by definition',
    seen: 'derived',
  },
  margin: {
    says: 'turn before a threshold',
    formula: 'the shortest turn after which the loss has grown by the true loss of the threshold, residue counted in',
    source: 'the fitted lobe; limits by propagation of its covariance',
    seen: 'derived',
  },
  farEnd: {
    says: 'the same at the far end',
    formula: 'separation x tangent of the turn',
    source: 'geometry',
    seen: 'derived',
  },
  ratio: {
    says: 'covered over clean',
    formula:
      'mean covered reading over the mean of the clean readings before and after, in received power; limits 95 %',
    source: 'the covered test of this record; limits by Student, likeness of neighbours, rounding and drift counted in',
    seen: 'derived',
  },
  largest: {
    says: 'largest obscuration that can be read',
    formula: '100 (1 - ratio) %; 100 % where the equipment takes the covered reading off',
    source: 'light that does not come by the beam cannot be taken away by smoke',
    seen: 'derived',
  },
  trueSmoke: {
    says: 'true obscuration at a threshold',
    formula: 'threshold / (1 - ratio)',
    source: 'light that does not come by the beam cannot be taken away by smoke',
    seen: 'derived',
  },
  drift: {
    says: 'change of the clean reading',
    formula: `after less before, over their mean; told from ${cleanDrift.value} %`,
    ...cited(cleanDrift),
  },
  filter: {
    says: 'obscuration by a filter',
    formula: `100 (1 - transmittance^crossings) %, two crossings before a reflective head; tolerance ${filterTolerance.value} %`,
    ...cited(filterTolerance),
  },
  cover: {
    says: 'obscuration by a cover on the reflector',
    formula: `share of the light that it hides, met once; tolerance ${coverTolerance.value} %`,
    ...cited(coverTolerance),
  },
  measured: {
    says: 'obscuration measured in a step',
    formula: 'middle of what was held, over the clean reading before the test, residue taken off',
    source: 'the proof log of this record',
    seen: 'derived',
  },
  rise: {
    says: 'time in which a cover went on',
    formula: `from the last clear sample to the first at the fault threshold; a blocked beam within ${blockedWithin.value} s`,
    ...cited(blockedWithin),
  },
  window: {
    says: 'time from threshold to signal',
    formula: `the delay of the site file, and up to ${signalAllowance.value} s more`,
    ...cited(signalAllowance),
  },
} as const satisfies Record<string, Omit<BasisOut, 'key'>>;

/** A key of the table. */
export type BasisKey = keyof typeof bases;

/** The table as a list, as a record carries it. */
export const basesOut: readonly BasisOut[] = Object.entries(bases).map(([key, basis]) => ({ key, ...basis }));
