import type { Sourced } from './sourced.js';

const growth = 'NFPA 204, classes of growth, as listed by an open t-squared calculator';

/** Time in which a fire that grows with the square of time reaches `growthHeat`. */
export const growthTimes = {
  slow: { value: 600, unit: 's', source: growth, seen: 'read', note: 'to 1055 kW (1000 Btu/s)' },
  medium: { value: 300, unit: 's', source: growth, seen: 'read', note: 'to 1055 kW (1000 Btu/s)' },
  fast: { value: 150, unit: 's', source: growth, seen: 'read', note: 'to 1055 kW (1000 Btu/s)' },
  ultraFast: { value: 75, unit: 's', source: growth, seen: 'read', note: 'to 1055 kW (1000 Btu/s)' },
} satisfies Record<string, Sourced>;

/** Heat release rate that defines the growth times. */
export const growthHeat = {
  value: 1055,
  range: [1000, 1055],
  unit: 'kW',
  source: 'NFPA 204, classes of growth (1000 Btu/s)',
  seen: 'read',
  note: 'the 1000 kW form (Quintiere, eq. 6-3) differs by 5.5 % in the coefficient, 2.7 % in time: say which is used',
} satisfies Sourced;

/** Share of a fire's heat that leaves as radiation, where a fuel names none. */
export const radiativeShare = {
  value: 0.35,
  range: [0.35, 0.52],
  unit: '1',
  source: 'common practice, no source',
  seen: 'common practice',
  note: '0.52 for flexible foam GM21 (SFPE Handbook, read)',
} satisfies Sourced;

/** Heat release rate of the second definition of the growth times, with the same seconds. */
export const growthHeatRound = {
  value: 1000,
  unit: 'kW',
  source: 'Quintiere, eq. 6-3: coefficient 1000/t^2, as quoted in an open collection of t-squared fires',
  seen: 'read',
  note: 'ISO/TS 16733 alike (from memory)',
} satisfies Sourced;

/** Share of its fuel that a smouldering fire turns into smoke. */
export const smoulderingYield = {
  value: 0.1,
  range: [0.03, 0.17],
  unit: 'g/g',
  source: 'Mulholland, SFPE Handbook, smoke production of wood and polyurethane in pyrolysis',
  seen: 'from memory',
  note: 'value: middle of what wood (0.03 to 0.17) and flexible foam (0.07 to 0.15) span',
} satisfies Sourced;

/** Heat of a gram of fuel that smoulders. */
export const smoulderingHeat = {
  value: 9,
  range: [6, 12],
  unit: 'kJ/g',
  source: 'Rein, SFPE Handbook, Smoldering Combustion',
  seen: 'from memory',
  note: 'value: middle of the range',
} satisfies Sourced;

/** How far a soot yield may lie from the only source there is, up or down. */
export const loneYieldFactor = {
  value: 1.58,
  unit: '1',
  source: 'square root of 2.5, the least spread between sources of one fuel (heptane)',
  seen: 'own choice',
  note: 'where a fuel has one source only',
} satisfies Sourced;

/** Diameter of a fire at the time when beams see it, where nothing else is said. */
export const usualDiameter = {
  value: 0.5,
  unit: 'm',
  source: '100 kW at 500 kW/m2, a usual density of heat',
  seen: 'own choice',
  note: 'moves the virtual origin by centimetres only',
} satisfies Sourced;

/** How a smouldering fire begins where nothing else is said. */
export const usualSmoulder = {
  first: {
    value: 0.001,
    unit: 'g/s',
    source: 'a smouldering spot that loses 10 mg/s of its fuel, a tenth of it smoke',
    seen: 'own choice',
  },
  most: {
    value: 0.5,
    unit: 'g/s',
    source: 'a chair that smoulders through in an hour or two, a tenth of it smoke',
    seen: 'own choice',
  },
} satisfies Record<string, Sourced>;
