import * as air from './air.js';
import * as commissioning from './commissioning.js';
import * as fires from './fires.js';
import * as fuels from './fuels.js';
import * as layout from './layout.js';
import * as light from './light.js';
import * as nuisance from './nuisance.js';
import * as plume from './plume.js';
import * as response from './response.js';
import * as settings from './settings.js';
import * as smoke from './smoke.js';
import * as smokeCurves from './smokeCurves.js';
import * as smokeRule from './smokeRule.js';
import * as soiling from './soiling.js';
import type { Sourced, Topic } from './sourced.js';
import * as spotDetectors from './spotDetectors.js';
import * as spread from './spread.js';
import * as structure from './structure.js';
import * as testFires from './testFires.js';
import * as units from './units.js';
import * as visibility from './visibility.js';

/** One entry of the collected table. */
export interface Entry {
  /** Title of the topic. */
  readonly topic: string;
  /** Name to import, with the path inside it where entries are nested: `fuels.wood.sootYield`. */
  readonly name: string;
  readonly figure: Sourced;
}

/*
 * Every export of a topic's file has to fit `Topic`: an entry that lacks its source does not compile here either.
 * This list is for the page of numbers and for tests. No room imports it: it would drag every number along.
 */
const topics: Readonly<Record<string, Topic>> = {
  Units: units,
  'The light and its lobe': light,
  'Smoke and the light it takes': smoke,
  Visibility: visibility,
  'Response of a detector, by standard': response,
  'Usual settings': settings,
  Commissioning: commissioning,
  'Smoke rule': smokeRule,
  'Smoke curves, measured': smokeCurves,
  Air: air,
  'Growing fires': fires,
  Fuels: fuels,
  'Plume and ceiling jet': plume,
  'Point detectors, for contrast': spotDetectors,
  'Standard test fires': testFires,
  'Dust, mist and exhaust': nuisance,
  Dirt: soiling,
  'Movement of the structure': structure,
  'Layout, by rule set': layout,
  Spread: spread,
};

const isEntry = (node: Sourced | Topic): node is Sourced => 'value' in node && 'source' in node;

function entries(topic: string, node: Topic, path: string): Entry[] {
  return Object.entries(node).flatMap(([key, inner]) => {
    const name = path === '' ? key : `${path}.${key}`;
    return isEntry(inner) ? [{ topic, name, figure: inner }] : entries(topic, inner, name);
  });
}

/** Every constant of the library, topic by topic. */
export const collected: readonly Entry[] = Object.entries(topics).flatMap(([topic, node]) => entries(topic, node, ''));
