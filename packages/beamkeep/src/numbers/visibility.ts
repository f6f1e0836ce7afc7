import type { Sourced } from './sourced.js';

/** Visibility of a reflecting sign times extinction. */
export const reflectingSign = {
  value: 3,
  unit: '1',
  source: 'CIBSE Guide E, eq. 10.7 (after Jin)',
  clause: 'note to eq. 10.7',
  seen: 'read',
  note: 'natural extinction of visible light. A repetition of the trial found 3 and 8 fair for usual rooms',
} satisfies Sourced;

/** Visibility of a light-emitting sign times extinction. */
export const lightEmittingSign = {
  value: 8,
  unit: '1',
  source: 'CIBSE Guide E, eq. 10.7 (after Jin)',
  clause: 'note to eq. 10.7',
  seen: 'read',
} satisfies Sourced;

/** Contrast at which an object is just seen: of visual range, and 5 % left over the meteorological optical range. */
export const visibleContrast = {
  value: 0.05,
  unit: '1',
  source: 'CIE S 017:2020, 17-31-018; AMS Glossary, visual range',
  seen: 'read',
  note: 'WMO chose it in 1957',
} satisfies Sourced;

/** Contrast threshold of the older form of the visual range. */
export const olderVisibleContrast = {
  value: 0.02,
  unit: '1',
  source: 'Koschmieder equation with E/E0 = 0.02, textbook excerpt',
  seen: 'read',
  note: 'visual range 3.912/k instead of 2.996/k',
} satisfies Sourced;

/** Extinction at which the haze scale has its zero. */
export const clearestAir = {
  value: 1e-5,
  unit: '1/m',
  source: 'Pitchford and Malm, standard visual index, abstract: 10 ln(b / 0.01 per km)',
  seen: 'read',
} satisfies Sourced;

/** Optical density at which a room is held to be untenable. */
export const tenableDensity = {
  value: 0.25,
  unit: '1/m',
  source: 'NIST TN 1455, Performance of Home Smoke Alarms',
  clause: 'p. 112',
  edition: '2008',
  seen: 'read',
  note: 'decimal, at 1.5 m above the floor',
} satisfies Sourced;
