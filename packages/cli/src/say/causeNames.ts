import type { CauseWord } from '../answers.js';

/** Each cause in the words of a person on site; beside them stands the word of the JSON output. */
export const causeNames: Readonly<Record<CauseWord, string>> = {
  'smoke-like': 'cannot be told from smoke',
  contamination: 'dirt on reflector or optics',
  'misalignment-step': 'knocked or slipped out of aim',
  'misalignment-drift': 'aim creeping away',
  'building-movement': 'building moves the aim',
  obstruction: 'object in the path',
  condensation: 'mist or dew on the optics',
  'process-aerosol': 'dust or steam from work',
  'ambient-light': 'sun or lamps on the receiver',
  vibration: 'the mount shakes',
  'electrical-noise': 'electrical noise',
  'data-gap': 'samples missing or stuck',
  cleaned: 'cleaned or re-aimed',
};
