import { type CauseWord, causeWords } from 'beamkeep/diagnosis';

/** Names of the causes for a heading, and short ones for the bars of a plot. */
const names: Readonly<Record<CauseWord, readonly [heading: string, bar: string]>> = {
  contamination: ['Dirt on the optics', 'dirt'],
  'misalignment-step': ['Knocked out of aim', 'knocked'],
  'misalignment-drift': ['Aim creeping away', 'aim creeps'],
  'building-movement': ['The building moves', 'building moves'],
  obstruction: ['An object in the path', 'object in path'],
  condensation: ['Mist or dew on the optics', 'mist'],
  'process-aerosol': ['Dust or steam from work', 'dust, steam'],
  'ambient-light': ['Sun or lamps on the receiver', 'stray light'],
  vibration: ['The mount shakes', 'shaking'],
  'electrical-noise': ['Electrical noise', 'noise'],
  'data-gap': ['Samples missing or stuck', 'no data'],
  'smoke-like': ['Cannot be told from smoke', 'like smoke'],
  cleaned: ['Loss removed by work', 'loss removed'],
};

const isCause = (word: string): word is CauseWord => (causeWords as readonly string[]).includes(word);

export const causeHeading = (cause: CauseWord): string => names[cause][0];
export const causeOnBar = (cause: CauseWord): string => names[cause][1];

/**
 * A sentence of the library that calls causes by their words, "smoke-like (47 %)" or "smoke-like (treat as fire, 47 %)",
 * with their headings instead.
 */
export const withHeadings = (sentence: string): string =>
  sentence.replace(/([a-z-]+)(?= \((?:[a-z ]+, )?\d+ %\))/g, (word) => (isCause(word) ? causeHeading(word) : word));

/** The heading of what is easily taken for a cause: another cause, or a reading that was set anew. */
export const doubleHeading = (word: string): string =>
  isCause(word) ? causeHeading(word) : word === 'renormalised' ? 'The equipment set its reading anew' : word;
