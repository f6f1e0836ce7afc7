import * as v from 'valibot';
import { layouts, samplings, signalUnits, timeFormats, works } from './site.js';
import { siteDefaults } from './siteDefaults.js';
import { beamKeys, compensationKeys, type SiteKey, topKeys } from './siteKeys.js';
import { within } from './wanted.js';

/*
 * The shape of a site file, key by key. Limits come from the table of keys; unknown keys are looked for before
 * (checkKeys), what concerns several keys at once is looked at after (parseSite).
 */

const numberOf = ({ limits }: SiteKey) =>
  v.pipe(
    v.number(),
    v.check((value) => within(value, limits)),
  );

// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
const controls = /[\u0000-\u001f\u007f-\u009f]/;
const plainText = v.pipe(
  v.string(),
  v.check((text) => text.trim() !== '' && !controls.test(text)),
);

/** Whether the runtime knows a time zone. */
export function isZone(zone: string): boolean {
  try {
    new Intl.DateTimeFormat('en', { timeZone: zone });
    return true;
  } catch (e) {
    if (e instanceof RangeError) return false;
    throw e;
  }
}

const compensationWord = v.picklist(['none', 'unknown']);
const compensationLimit = v.object({ limitDecibels: numberOf(compensationKeys.limitDecibels) });
const compensation = v.lazy((input) => (typeof input === 'object' ? compensationLimit : compensationWord));

const beam = v.object({
  id: plainText,
  layout: v.picklist(layouts),
  separation: numberOf(beamKeys.separation),
  height: v.optional(numberOf(beamKeys.height)),
  bearing: v.optional(numberOf(beamKeys.bearing)),
  tilt: v.optional(numberOf(beamKeys.tilt)),
  wavelength: v.optional(numberOf(beamKeys.wavelength)),
  halfAngle: v.optional(numberOf(beamKeys.halfAngle)),
  signalColumn: v.optional(plainText),
  signalUnit: v.optional(v.picklist(signalUnits)),
  cleanAir: v.optional(numberOf(beamKeys.cleanAir)),
  covered: v.optional(numberOf(beamKeys.covered)),
  coveredSubtracted: v.optional(v.boolean()),
  compensation: v.optional(compensation),
  alarmThreshold: v.optional(numberOf(beamKeys.alarmThreshold)),
  alarmDelay: v.optional(numberOf(beamKeys.alarmDelay)),
  faultThreshold: v.optional(numberOf(beamKeys.faultThreshold)),
  faultDelay: v.optional(numberOf(beamKeys.faultDelay)),
  latching: v.optional(v.boolean()),
  hysteresis: v.optional(numberOf(beamKeys.hysteresis)),
  temperatureColumn: v.optional(plainText),
  humidityColumn: v.optional(plainText),
  gainColumn: v.optional(plainText),
  plantColumn: v.optional(plainText),
});

const visit = v.object({
  time: v.string(),
  until: v.optional(v.string()),
  beam: v.optional(plainText),
  work: v.picklist(works),
});

const timeColumns = v.lazy((input) =>
  Array.isArray(input)
    ? v.pipe(
        v.strictTuple([plainText, plainText]),
        v.check(([date, time]) => date !== time),
      )
    : plainText,
);

/** A site file as written: every key of the right kind, nothing filled in. */
export const siteSchema = v.object({
  format: v.optional(v.picklist([siteDefaults.format])),
  name: v.optional(plainText),
  timeZone: v.optional(v.pipe(v.string(), v.check(isZone))),
  latitude: v.optional(numberOf(topKeys.latitude)),
  longitude: v.optional(numberOf(topKeys.longitude)),
  timeColumn: v.optional(timeColumns),
  timeFormat: v.optional(v.picklist(timeFormats)),
  sampling: v.optional(v.picklist(samplings)),
  beams: v.pipe(v.array(beam), v.minLength(1)),
  visits: v.optional(v.array(visit)),
});

/** A site file as written. */
export type SiteAsWritten = v.InferOutput<typeof siteSchema>;
/** A beam as written. */
export type BeamAsWritten = v.InferOutput<typeof beam>;
/** A visit as written. */
export type VisitAsWritten = v.InferOutput<typeof visit>;
