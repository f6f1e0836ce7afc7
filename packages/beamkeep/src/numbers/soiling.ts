import type { Sourced } from './sourced.js';

/** Quickest loss by dirt that is looked for indoors. */
export const mostDirtRate = {
  value: 0.6,
  range: [0, 0.6],
  unit: '%/day',
  source: 'common practice, no source',
  seen: 'common practice',
  note: 'no published rate for beam reflectors was found',
} satisfies Sourced;

/** Quickest loss of reflectance by dirt of a solar mirror facing up. */
export const mirrorDirtRate = {
  value: 2.1,
  range: [0, 3.6],
  unit: '%/day',
  source: 'Picotti and others, Solar Energy 263 (2023) 111945, measured reflectance',
  seen: 'derived',
  note: 'outdoors; both crossings are in the figure already: never square it. Upright mirrors a seventh or less',
} satisfies Sourced;

/** Loss by dirt a day of photovoltaics between rains. */
export const panelDirtRate = {
  value: 0.15,
  unit: '%/day',
  source: 'Kimber model, default of pvlib.soiling.kimber',
  seen: 'read',
} satisfies Sourced;

const recovery = 'Deceglie, Micheli and Muller, IEEE J. Photovoltaics 8(2) 547, 2018, defaults in rdtools';

/** Rules by which a cleaning is told in a daily series of soiling. */
export const cleaningRule = {
  medianDays: { value: 13, unit: 'days', source: recovery, seen: 'read', note: 'width of the centred rolling median' },
  fence: {
    value: 1.5,
    unit: 'interquartile ranges',
    source: recovery,
    seen: 'read',
    note: 'above the third quartile of absolute steps',
  },
  leastRun: { value: 7, unit: 'days', source: recovery, seen: 'read' },
} satisfies Record<string, Sourced>;
