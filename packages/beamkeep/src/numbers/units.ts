import type { Sourced } from './sourced.js';

/** The international foot. */
export const foot = {
  value: 0.3048,
  unit: 'm',
  source: 'International yard and pound agreement, 1959',
  seen: 'from memory',
  note: 'exact by definition',
} satisfies Sourced;

/** Natural over decimal logarithm: extinction over optical density. */
export const naturalPerDecimal = {
  value: Math.LN10,
  unit: '1',
  source: 'ln 10, from the definition of the logarithms',
  seen: 'derived',
  note: 'handbooks print 2.303, which moves the fourth digit',
} satisfies Sourced;

/** British thermal unit of the International Table. */
export const britishThermalUnit = {
  value: 1.05505585262,
  unit: 'kJ',
  source: 'International Table calorie, pound and degree Fahrenheit',
  seen: 'from memory',
  note: 'exact by definition',
} satisfies Sourced;
