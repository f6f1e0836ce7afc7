import { isObject } from './checkKeys.js';
import { isZone } from './isZone.js';
import { meant } from './nearest.js';
import { placeOfBeam, placeOfVisit, type Refuse } from './place.js';
import { quoted } from './quoted.js';
import { beamKeys, compensationKeys, type SiteKey, topKeys, visitKeys } from './siteKeys.js';
import { wanted, within } from './wanted.js';
import type { SiteAsWritten } from './written.js';

/*
 * Every value of a site file is of its key's kind, within its limits and among its words: all of that is read off the
 * table of keys. What concerns several keys at once is looked at after (parseSite).
 */

type Keys = Readonly<Record<string, SiteKey>>;
type JsonObject = Readonly<Record<string, unknown>>;

// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
const controls = /[\u0000-\u001f\u007f-\u009f]/;
const isText = (value: unknown): value is string =>
  typeof value === 'string' && value.trim() !== '' && !controls.test(value);
const isWord = (value: unknown, { words = [] }: SiteKey): boolean => typeof value === 'string' && words.includes(value);

/** Whether a value is what its key asks for. */
const holds: Record<SiteKey['kind'], (value: unknown, about: SiteKey) => boolean> = {
  text: isText,
  number: (value, { limits }) => typeof value === 'number' && within(value, limits),
  word: isWord,
  flag: (value) => typeof value === 'boolean',
  zone: (value) => typeof value === 'string' && isZone(value),
  instant: (value) => typeof value === 'string',
  columns: (value) =>
    isText(value) || (Array.isArray(value) && value.length === 2 && value.every(isText) && value[0] !== value[1]),
  // What stands in the object is a key of its own.
  compensation: (value, about) => isObject(value) || isWord(value, about),
  list: Array.isArray,
};

/**
 * Refuses values that their keys do not allow, and keys that are missing. Unknown keys, and what is no object where one
 * must stand, were refused before (checkKeys).
 *
 * @returns the same site
 */
export function checkValues(site: JsonObject, refuse: Refuse): SiteAsWritten {
  checkOne(site, topKeys, '', refuse);
  const { beams, visits = [] } = site as { beams: readonly JsonObject[]; visits?: readonly JsonObject[] };
  if (beams.length === 0) refuse('', 'beams is empty: give at least one beam.');
  for (const [row, beam] of beams.entries()) {
    const place = placeOfBeam(row, beam);
    checkOne(beam, beamKeys, place, refuse);
    const { compensation } = beam as { compensation?: unknown };
    if (isObject(compensation)) checkOne(compensation, compensationKeys, `${place}: compensation`, refuse);
  }
  for (const [row, visit] of visits.entries()) checkOne(visit, visitKeys, placeOfVisit(row), refuse);
  return site as unknown as SiteAsWritten;
}

function checkOne(object: JsonObject, keys: Keys, place: string, refuse: Refuse): void {
  for (const [key, about] of Object.entries(keys)) {
    const value = object[key];
    if (value === undefined ? about.required : !holds[about.kind](value, about))
      refuse(place, complaint(key, value, about));
  }
}

function complaint(key: string, found: unknown, about: SiteKey): string {
  if (found === undefined) return `${key} is missing (${about.meaning}): ${wanted(about)}.`;
  const candidates = about.kind === 'zone' ? Intl.supportedValuesOf('timeZone') : (about.words ?? []);
  const hint = typeof found === 'string' ? meant(found, candidates) : undefined;
  const unquoted = about.kind === 'number' && typeof found === 'string' ? ', without quotes' : '';
  return `${key} is ${quoted(found)}: ${wanted(about)}${unquoted}${hint === undefined ? '' : ` (meant: "${hint}"?)`}.`;
}
