import type { Sourced } from './sourced.js';

const lightBeams =
  'Aircraft cargo compartment tests, DOT/FAA/AR-03/49, in the NIST Fire Research Division Experimental Database';

/** Quickest time from 10 to 90 % obscuration by measured smoke, by length of smoke. */
export const quickestFill = {
  over10Metres: {
    value: 14.1,
    unit: 's',
    source: lightBeams,
    seen: 'derived',
    note: 'quickest of three tests of one 5 kW plastic fire; the whole length filled as fast as one point. A larger fire can be quicker',
  },
  over20Metres: {
    value: 10.4,
    unit: 's',
    source: lightBeams,
    seen: 'derived',
    note: 'quickest of three tests of one 5 kW plastic fire; the whole length filled as fast as one point. A larger fire can be quicker',
  },
  over50Metres: {
    value: 7.4,
    unit: 's',
    source: lightBeams,
    seen: 'derived',
    note: 'quickest of three tests of one 5 kW plastic fire; the whole length filled as fast as one point. A larger fire can be quicker',
  },
  over100Metres: {
    value: 5.4,
    unit: 's',
    source: lightBeams,
    seen: 'derived',
    note: 'quickest of three tests of one 5 kW plastic fire; the whole length filled as fast as one point. A larger fire can be quicker',
  },
} satisfies Record<string, Sourced>;

/** Doubling time of smouldering smoke. */
export const smoulderDoubling = {
  value: 198,
  range: [116, 617],
  unit: 's',
  source: 'NIST TN 1455-1, 2008, Table 18 (smouldering chairs)',
  seen: 'derived',
  note: 'masses read, doubling times worked out from them',
} satisfies Sourced;
