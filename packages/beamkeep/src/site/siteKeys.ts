import { layouts, samplings, signalUnits, timeFormats, works } from './site.js';
import { siteDefaults } from './siteDefaults.js';

/*
 * Every key of a site file, in the order in which a person fills it in: what it means, in which unit, what is allowed
 * and what holds when it is left out. Checks and types are read off this table; help texts, the page of keys
 * and the form in the notebook are drawn from here too, so that none of them can differ.
 */

/** Where a key stands: at the top level (`site`, `log`), in a beam, or in a visit. */
export type SiteSection = 'site' | 'log' | 'beam' | 'visit';

/** What a number may be; `above` and `below` leave out the number itself. */
export interface Limits {
  readonly above?: number;
  readonly atLeast?: number;
  readonly below?: number;
  readonly atMost?: number;
}

/** Everything known about one key of a site file. */
export interface SiteKey {
  readonly section: SiteSection;
  readonly meaning: string;
  /** What its value is; `zone` is a name of an IANA zone, `instant` an ISO 8601 time. */
  readonly kind: 'text' | 'number' | 'word' | 'flag' | 'zone' | 'instant' | 'columns' | 'compensation' | 'list';
  /** Unit of a number; '' where it has none. `signalUnit`: as the beam's key of that name says. */
  readonly unit: string;
  readonly limits?: Limits;
  readonly words?: readonly string[];
  readonly required: boolean;
  /** What holds when the key is left out, in words; absent for a required key. */
  readonly whenLeftOut?: string;
  /** Whether its default is named under `assumed`. */
  readonly assumed?: boolean;
}

const text = { kind: 'text', unit: '', required: false } as const;
const number = { kind: 'number', required: false } as const;
const column = { section: 'beam', ...text, whenLeftOut: 'not logged' } as const;
const word = { kind: 'word', unit: '', required: false } as const;

/** Keys of the top level. */
export const topKeys = {
  format: {
    section: 'site',
    ...word,
    meaning: 'form and version of this file',
    words: [siteDefaults.format],
    whenLeftOut: siteDefaults.format,
  },
  name: { section: 'site', ...text, meaning: 'name of the site', whenLeftOut: siteDefaults.name },
  timeZone: {
    section: 'site',
    kind: 'zone',
    unit: '',
    required: false,
    meaning: 'IANA zone: local times in a log are read in it, and findings are told in it',
    whenLeftOut: siteDefaults.timeZone,
  },
  latitude: {
    section: 'site',
    ...number,
    meaning: 'where the building stands, north positive (place of the sun)',
    unit: 'degrees',
    limits: { atLeast: -90, atMost: 90 },
    whenLeftOut: 'no place of the sun',
  },
  longitude: {
    section: 'site',
    ...number,
    meaning: 'where the building stands, east positive (place of the sun)',
    unit: 'degrees',
    limits: { atLeast: -180, atMost: 180 },
    whenLeftOut: 'no place of the sun',
  },
  timeColumn: {
    section: 'log',
    kind: 'columns',
    unit: '',
    required: false,
    meaning: 'name of the time column, or two names (date, time) to be joined',
    whenLeftOut: 'the first column',
  },
  timeFormat: {
    section: 'log',
    ...word,
    meaning: 'how time is written in the log',
    words: timeFormats,
    whenLeftOut: 'worked out, and told under notes',
  },
  sampling: {
    section: 'log',
    ...word,
    meaning: 'mean: a value stands for the interval before its time; on-change: a value holds until the next line',
    words: samplings,
    whenLeftOut: siteDefaults.sampling,
  },
  beams: { section: 'site', kind: 'list', unit: '', meaning: 'the beams, one object each', required: true },
  visits: {
    section: 'site',
    kind: 'list',
    unit: '',
    meaning: 'work done at the site, one object a visit',
    required: false,
    whenLeftOut: 'no visit known',
  },
} as const satisfies Record<string, SiteKey>;

/** Keys of a beam. */
export const beamKeys = {
  id: { section: 'beam', ...text, meaning: 'name of the beam, its own', required: true },
  layout: {
    section: 'beam',
    ...word,
    meaning: 'reflective: light crosses the smoke twice; end-to-end: once',
    words: layouts,
    required: true,
  },
  separation: {
    section: 'beam',
    ...number,
    meaning: 'distance between the two ends',
    unit: 'm',
    limits: { above: 0, atMost: 1000 },
    required: true,
  },
  height: {
    section: 'beam',
    ...number,
    meaning: 'of the beam above the floor',
    unit: 'm',
    limits: { atLeast: 0, atMost: 1000 },
    whenLeftOut: 'not known',
  },
  bearing: {
    section: 'beam',
    ...number,
    meaning: 'direction in which the receiver looks, clockwise from north',
    unit: 'degrees',
    limits: { atLeast: -360, atMost: 360 },
    whenLeftOut: 'not known',
  },
  tilt: {
    section: 'beam',
    ...number,
    meaning: 'direction in which the receiver looks, above the horizontal',
    unit: 'degrees',
    limits: { atLeast: -90, atMost: 90 },
    whenLeftOut: 'not known',
  },
  wavelength: {
    section: 'beam',
    ...number,
    meaning: 'of the light',
    unit: 'nm',
    limits: { atLeast: 200, atMost: 2500 },
    whenLeftOut: `${siteDefaults.wavelength}`,
    assumed: true,
  },
  halfAngle: {
    section: 'beam',
    ...number,
    meaning: 'turn of the head at which the received level halves',
    unit: 'degrees',
    limits: { above: 0, atMost: 90 },
    whenLeftOut: 'not known',
  },
  signalColumn: {
    section: 'beam',
    ...text,
    meaning: "the beam's column in the log; in a log of one reading a line, the beam's name there",
    whenLeftOut: 'the only other column beside time',
  },
  signalUnit: {
    section: 'beam',
    ...word,
    meaning: 'unit of that column; counts and millivolts are proportional to received optical power',
    words: signalUnits,
    whenLeftOut: siteDefaults.signalUnit,
  },
  cleanAir: {
    section: 'beam',
    ...number,
    meaning: 'reading in clean air at commissioning',
    unit: 'signalUnit',
    whenLeftOut: "percent 100, obscuration 0, decibels 0; else from the log's first good stretch",
    assumed: true,
  },
  covered: {
    section: 'beam',
    ...number,
    meaning: 'reading with the reflector (or receiver) fully covered: what does not come by the beam',
    unit: 'signalUnit',
    whenLeftOut: 'nothing comes back',
    assumed: true,
  },
  coveredSubtracted: {
    section: 'beam',
    kind: 'flag',
    unit: '',
    required: false,
    meaning: 'whether the equipment takes the covered reading off before it compares with its thresholds',
    whenLeftOut: `${siteDefaults.coveredSubtracted}`,
  },
  compensation: {
    section: 'beam',
    kind: 'compensation',
    unit: '',
    required: false,
    meaning: `the equipment's own slow gain: "none", "unknown", or { "limitDecibels": n } where it ends`,
    words: ['none', 'unknown'],
    whenLeftOut: siteDefaults.compensation,
  },
  alarmThreshold: {
    section: 'beam',
    ...number,
    meaning: 'obscuration that means smoke',
    unit: '%',
    limits: { above: 0, atMost: 100 },
    whenLeftOut: `${siteDefaults.alarmThreshold}`,
    assumed: true,
  },
  alarmDelay: {
    section: 'beam',
    ...number,
    meaning: 'how long the obscuration must hold before it means smoke',
    unit: 's',
    limits: { atLeast: 0, atMost: 86_400 },
    whenLeftOut: `${siteDefaults.alarmDelay}`,
    assumed: true,
  },
  faultThreshold: {
    section: 'beam',
    ...number,
    meaning: 'obscuration treated as a blocked beam',
    unit: '%',
    limits: { above: 0, atMost: 100 },
    whenLeftOut: `${siteDefaults.faultThreshold}`,
    assumed: true,
  },
  faultDelay: {
    section: 'beam',
    ...number,
    meaning: 'how long a blocked beam must hold before it means a fault',
    unit: 's',
    limits: { atLeast: 0, atMost: 86_400 },
    whenLeftOut: `${siteDefaults.faultDelay}`,
    assumed: true,
  },
  latching: {
    section: 'beam',
    kind: 'flag',
    unit: '',
    required: false,
    meaning: 'an alarm stays until reset',
    whenLeftOut: `${siteDefaults.latching}`,
  },
  hysteresis: {
    section: 'beam',
    ...number,
    meaning: 'how far the obscuration must fall below its threshold before an unlatched alarm, or a fault, is over',
    unit: '%',
    limits: { atLeast: 0, below: 100 },
    whenLeftOut: `${siteDefaults.hysteresis}`,
  },
  temperatureColumn: { ...column, meaning: 'column of the temperature near the structure, degC' },
  humidityColumn: { ...column, meaning: 'column of the relative humidity near the optics, %' },
  gainColumn: { ...column, meaning: "column of the equipment's gain, as logged" },
  plantColumn: { ...column, meaning: 'column that tells whether plant runs, 0 or 1' },
} as const satisfies Record<string, SiteKey>;

/** Keys of a beam's `compensation`. */
export const compensationKeys = {
  limitDecibels: {
    section: 'beam',
    ...number,
    meaning: 'gain at which the compensation ends',
    unit: 'dB',
    limits: { above: 0, atMost: 60 },
    required: true,
  },
} as const satisfies Record<string, SiteKey>;

/** Keys of a visit. */
export const visitKeys = {
  time: {
    section: 'visit',
    kind: 'instant',
    unit: '',
    meaning: 'when the work was done, or began; without an offset it is local time in timeZone',
    required: true,
  },
  until: {
    section: 'visit',
    kind: 'instant',
    unit: '',
    required: false,
    meaning: 'when the work ended',
    whenLeftOut: 'an instant',
  },
  beam: { section: 'visit', ...text, meaning: 'id of the beam worked on', whenLeftOut: 'all beams' },
  work: { section: 'visit', ...word, meaning: 'what was done', words: works, required: true },
} as const satisfies Record<string, SiteKey>;

/** Every key of a site file with its name, in the order in which a person fills it in. */
export const siteKeys: readonly (SiteKey & { readonly key: string })[] = [
  ...Object.entries(topKeys),
  ...Object.entries(beamKeys),
  ...Object.entries(visitKeys),
].map(([key, about]) => ({ key, ...about }));
