import type { Sourced } from './sourced.js';

const haze = 'IMPROVE equation for haze, first form';

/** Light that a kilogram of each aerosol takes, visible light. */
export const aerosolExtinction = {
  coarseDust: { value: 600, unit: 'm2/kg', source: haze, seen: 'read', note: '2.5 to 10 um' },
  fineDust: { value: 1000, unit: 'm2/kg', source: haze, seen: 'read', note: 'mineral' },
  engineExhaust: { value: 10000, unit: 'm2/kg', source: haze, seen: 'read', note: 'elemental carbon' },
  oilMist: {
    value: 4000,
    range: [2800, 6100],
    unit: 'm2/kg',
    source: haze,
    seen: 'read',
    note: 'organic; range: small and large mode of the second form',
  },
} satisfies Record<string, Sourced>;

const workplace = 'US workplace limit, 54 FR 2332, as reproduced by NIOSH';

/** Dust allowed at a workplace. */
export const dustLimits = {
  total: {
    value: 15e-6,
    unit: 'kg/m3',
    source: workplace,
    seen: 'read',
    note: 'takes 59 % of 100 m: dust at its legal limit alarms a long beam',
  },
  respirable: { value: 5e-6, unit: 'kg/m3', source: workplace, seen: 'read' },
} satisfies Record<string, Sourced>;

/** Visibility below which mist is called fog. */
export const fogVisibility = {
  value: 1000,
  unit: 'm',
  source: 'definition of fog by visibility, public weather glossary',
  seen: 'read',
  note: 'thick below 200 m, dense below 50 m',
} satisfies Sourced;

/** Extinction efficiency of drops much larger than the wavelength. */
export const largeDropEfficiency = {
  value: 2,
  unit: '1',
  source: 'large-particle limit of light scattering, textbook result',
  seen: 'from memory',
} satisfies Sourced;
