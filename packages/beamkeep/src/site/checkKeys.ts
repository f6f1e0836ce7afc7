import { nearest } from './nearest.js';
import { placeOfBeam, placeOfVisit, type Refuse } from './place.js';
import { quoted } from './quoted.js';
import { beamKeys, compensationKeys, type SiteKey, topKeys, visitKeys } from './siteKeys.js';
import { wanted } from './wanted.js';

type Keys = Readonly<Record<string, SiteKey>>;
type JsonObject = Readonly<Record<string, unknown>>;

const homes: readonly (readonly [Keys, string])[] = [
  [topKeys, 'at the top level'],
  [beamKeys, 'in a beam'],
  [visitKeys, 'in a visit'],
];

export const isObject = (value: unknown): value is JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * Refuses keys that no site file has, and values that are not objects where objects must stand.
 *
 * A misspelt key must be told before anything else: its value would silently give way to a default.
 *
 * @returns the same site, as an object
 */
export function checkKeys(site: unknown, refuse: Refuse): JsonObject {
  if (!isObject(site)) return refuse('', `the site file holds ${quoted(site)}: it must hold an object: { ... }.`);
  checkOne(site, topKeys, '', refuse);
  for (const [row, beam] of listOf(site, 'beams', refuse).entries()) {
    const place = placeOfBeam(row, beam);
    if (!isObject(beam)) refuse(place, `is ${quoted(beam)}: give an object: { "id": ... }.`);
    checkOne(beam, beamKeys, place, refuse);
    const { compensation } = beam;
    if (isObject(compensation)) checkOne(compensation, compensationKeys, `${place}: compensation`, refuse);
  }
  for (const [row, visit] of listOf(site, 'visits', refuse).entries()) {
    if (!isObject(visit)) refuse(placeOfVisit(row), `is ${quoted(visit)}: give an object: { "time": ... }.`);
    checkOne(visit, visitKeys, placeOfVisit(row), refuse);
  }
  return site;
}

function checkOne(object: JsonObject, known: Keys, place: string, refuse: Refuse): void {
  for (const key of Object.keys(object)) {
    if (Object.hasOwn(known, key)) continue;
    const home = homes.find(([keys]) => Object.hasOwn(keys, key));
    if (home) refuse(place, `the key ${quoted(key)} does not stand here: it stands ${home[1]}.`);
    refuse(place, `unknown key ${quoted(key)}: the nearest known key is "${nearest(key, Object.keys(known))}".`);
  }
}

function listOf(site: JsonObject, key: 'beams' | 'visits', refuse: Refuse): readonly unknown[] {
  const list = site[key];
  if (Array.isArray(list)) return list;
  if (list !== undefined) refuse('', `${key} is ${quoted(list)}: ${wanted(topKeys[key])}.`);
  return [];
}
