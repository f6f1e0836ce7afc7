import type { Sourced } from './sourced.js';

/*
 * When the standard test fires reach their end, for a test to be valid. The rooms are about 10 m long and 4 m high;
 * a beam in a hall meets other smoke.
 */

const annex = 'EN 54-7 and ISO 7240-7, annexes, validity of test fires';

/** Least and most seconds from ignition to the end of test. */
export const testFireEnd = {
  smoulderingWood: {
    least: { value: 570, unit: 's', source: annex, clause: 'TF2', seen: 'from memory', note: 'end at 2 dB/m' },
    most: { value: 840, unit: 's', source: annex, clause: 'TF2', seen: 'from memory', note: 'end at 2 dB/m' },
  },
  glowingCotton: {
    least: {
      value: 280,
      unit: 's',
      source: annex,
      clause: 'TF3',
      seen: 'read',
      note: 'in a national edition; end at 2 dB/m',
    },
    most: {
      value: 750,
      unit: 's',
      source: annex,
      clause: 'TF3',
      seen: 'read',
      note: 'in a national edition; end at 2 dB/m',
    },
  },
  flamingPolyurethane: {
    least: { value: 140, unit: 's', source: annex, clause: 'TF4', seen: 'from memory', note: 'end at y = 6' },
    most: { value: 180, unit: 's', source: annex, clause: 'TF4', seen: 'from memory', note: 'end at y = 6' },
  },
  flamingHeptane: {
    least: { value: 120, unit: 's', source: annex, clause: 'TF5', seen: 'from memory', note: 'end at y = 6' },
    most: { value: 240, unit: 's', source: annex, clause: 'TF5', seen: 'from memory', note: 'end at y = 6' },
  },
} satisfies Record<string, Record<string, Sourced>>;
