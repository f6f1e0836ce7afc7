import type { SignalUnit } from './site.js';

/** What a site file leaves out. One table: the parser, its messages and the page of keys are all drawn from it. */
export const siteDefaults = {
  /** Version of the form. */
  format: 'beamkeep-site/1',
  name: 'unnamed site',
  timeZone: 'UTC',
  sampling: 'regular',
  /** [nm] */
  wavelength: 880,
  signalUnit: 'percent',
  coveredSubtracted: false,
  compensation: 'unknown',
  /** [%] */
  alarmThreshold: 35,
  /** [%] */
  faultThreshold: 90,
  /** [s] */
  alarmDelay: 10,
  /** [s] */
  faultDelay: 10,
  latching: true,
  /** [%] */
  hysteresis: 0,
} as const;

/** Reading in clean air where the unit itself says it; of counts and millivolts the log must tell. */
export const cleanAirDefaults: Readonly<Record<SignalUnit, number | undefined>> = {
  percent: 100,
  obscuration: 0,
  decibels: 0,
  counts: undefined,
  millivolts: undefined,
};
