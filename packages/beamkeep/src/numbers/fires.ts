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
