import type { Sourced } from './sourced.js';

/*
 * How late a point detector is. A beam in the open has no chamber that smoke must enter: these figures are here for
 * the contrast.
 */

/** Characteristic length of a point detector's chamber: dY/dt = (Yair - Y) u/L. */
export const chamberLength = {
  value: 1.8,
  unit: 'm',
  source: 'FDS Technical Reference Guide, Fire Detection Devices (after Heskestad)',
  seen: 'read',
} satisfies Sourced;

const suggested = 'FDS User Guide, Smoke Detectors, table of suggested values (after Cleary)';

/** Delays of entry and of filling of four point detectors: seconds = factor u^power, u in m/s. */
export const chamberDelays = {
  ionisation1: {
    entryFactor: { value: 2.5, unit: 's', source: suggested, seen: 'read' },
    entryPower: { value: -0.7, unit: '1', source: suggested, seen: 'read' },
    fillFactor: { value: 0.8, unit: 's', source: suggested, seen: 'read' },
    fillPower: { value: -0.9, unit: '1', source: suggested, seen: 'read' },
  },
  ionisation2: {
    entryFactor: { value: 1.8, unit: 's', source: suggested, seen: 'read' },
    entryPower: { value: -1.1, unit: '1', source: suggested, seen: 'read' },
    fillFactor: { value: 1, unit: 's', source: suggested, seen: 'read' },
    fillPower: { value: -0.8, unit: '1', source: suggested, seen: 'read' },
  },
  photoelectric1: {
    entryFactor: { value: 1.8, unit: 's', source: suggested, seen: 'read' },
    entryPower: { value: -1, unit: '1', source: suggested, seen: 'read' },
    fillFactor: { value: 1, unit: 's', source: suggested, seen: 'read' },
    fillPower: { value: -0.8, unit: '1', source: suggested, seen: 'read' },
  },
  photoelectric2: {
    entryFactor: { value: 1.8, unit: 's', source: suggested, seen: 'read' },
    entryPower: { value: -0.8, unit: '1', source: suggested, seen: 'read' },
    fillFactor: { value: 0.8, unit: 's', source: suggested, seen: 'read' },
    fillPower: { value: -0.8, unit: '1', source: suggested, seen: 'read' },
  },
} satisfies Record<string, Record<string, Sourced>>;

/** Smoke at which a point detector of the fire models alarms. */
export const pointAlarm = {
  value: 3.24,
  range: [3.24, 24],
  unit: '%/m',
  source: 'FDS repository, Verification/Detectors/smoke_detector.fds (1 %/ft, exact)',
  seen: 'read',
  note: 'the upper end is the default of CFAST (8 %/ft)',
} satisfies Sourced;
