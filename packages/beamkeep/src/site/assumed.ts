import type { Beam, SignalUnit } from './site.js';
import { siteDefaults } from './siteDefaults.js';
import type { BeamAsWritten } from './written.js';

/** How a unit is written after a reading. */
export const unitSigns: Readonly<Record<SignalUnit, string>> = {
  percent: '%',
  obscuration: '% obscuration',
  counts: 'counts',
  millivolts: 'mV',
  decibels: 'dB',
};

/**
 * The defaults in use that bear on safety, in words. A clean-air reading that only the log can tell is named by
 * whoever reads the log.
 *
 * @param written the beam as written in the site file
 * @param beam the same beam with its defaults
 */
export function assumedOf(written: BeamAsWritten, beam: Omit<Beam, 'assumed'>): string[] {
  const { cleanAir, signalUnit } = beam;
  const words: string[] = [];
  const say = (key: keyof BeamAsWritten, text: string) => {
    if (written[key] === undefined) words.push(text);
  };
  say('alarmThreshold', `alarmThreshold ${siteDefaults.alarmThreshold} %`);
  say('alarmDelay', `alarmDelay ${siteDefaults.alarmDelay} s`);
  say('faultThreshold', `faultThreshold ${siteDefaults.faultThreshold} %`);
  say('faultDelay', `faultDelay ${siteDefaults.faultDelay} s`);
  if (cleanAir !== undefined) say('cleanAir', `cleanAir ${cleanAir} ${unitSigns[signalUnit]}`);
  say('covered', 'covered not measured: taken that nothing comes back');
  say('wavelength', `wavelength ${siteDefaults.wavelength} nm`);
  return words;
}

/** Whether an assumption bears on the detector's decision; the wavelength of the light does not. */
export const bearsOnResponse = (assumption: string): boolean => !assumption.startsWith('wavelength ');
