import {
  usualAlarmDelay,
  usualAlarmThreshold,
  usualFaultDelay,
  usualFaultThreshold,
  usualWavelength,
} from '../numbers/index.js';
import type { SignalUnit } from './site.js';

/** What a site file leaves out. One table: the parser, its messages and the page of keys are all drawn from it. */
export const siteDefaults = {
  /** Version of the form. */
  format: 'beamkeep-site/1',
  name: 'unnamed site',
  timeZone: 'UTC',
  sampling: 'regular',
  /** [nm] */
  wavelength: usualWavelength.value,
  signalUnit: 'percent',
  coveredSubtracted: false,
  compensation: 'unknown',
  /** [%] */
  alarmThreshold: usualAlarmThreshold.value,
  /** [%] */
  faultThreshold: usualFaultThreshold.value,
  /** [s] */
  alarmDelay: usualAlarmDelay.value,
  /** [s] */
  faultDelay: usualFaultDelay.value,
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
