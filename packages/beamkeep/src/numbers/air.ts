import type { Sourced } from './sourced.js';

/** Air of a hall, where nothing else is said. */
export const usualAir = {
  temperature: { value: 293.15, unit: 'K', source: '20 degC, usual reference temperature', seen: 'derived' },
  density: {
    value: 1.204,
    unit: 'kg/m3',
    source: 'dry air at 20 degC and 101325 Pa, ideal gas',
    seen: 'derived',
  },
  specificHeat: {
    value: 1.005,
    unit: 'kJ/(kg K)',
    source: 'dry air near 20 degC, textbook value',
    seen: 'from memory',
    note: 'worked examples of fire texts take 1.0',
  },
} satisfies Record<string, Sourced>;

/** Acceleration of free fall. */
export const gravity = {
  value: 9.81,
  unit: 'm/s2',
  source: 'standard acceleration of free fall, rounded',
  seen: 'derived',
  note: 'NUREG-1805 works with 9.8',
} satisfies Sourced;
