import type { Sourced } from './sourced.js';

/** Wavelength at which specific extinction of smoke is usually measured (helium-neon laser). */
export const laboratoryWavelength = {
  value: 633,
  unit: 'nm',
  source: 'FDS Technical Reference Guide, after Mulholland and Croarkin, Fire and Materials 2000',
  clause: 'Fire Detection Devices',
  seen: 'read',
} satisfies Sourced;

/** Light that a kilogram of soot from a flaming fire takes, at 633 nm. */
export const flamingExtinction = {
  value: 8700,
  spread: 1100,
  unit: 'm2/kg',
  source: 'FDS Technical Reference Guide, after Mulholland and Croarkin, Fire and Materials 2000',
  clause: 'Fire Detection Devices',
  seen: 'read',
  note: 'at 633 nm, post-flame smoke; 29 fuels (from memory)',
} satisfies Sourced;

/** The older handbook figure for flaming fires. */
export const flamingExtinctionOlder = {
  value: 7600,
  unit: 'm2/kg',
  source: 'Seader and Einhorn, in the SFPE Handbook, Smoke Production and Properties',
  seen: 'from memory',
  note: 'NUREG-1805, eq. 18-1, works its example with 37000 ft2/lb = 7580 m2/kg (read)',
} satisfies Sourced;

/** Light that a kilogram of smoke from a smouldering fire takes. */
export const smoulderingExtinction = {
  value: 4400,
  unit: 'm2/kg',
  source: 'Seader and Einhorn, in the SFPE Handbook, Smoke Production and Properties',
  seen: 'from memory',
  note: 'wavelength not remembered, taken as 633 nm; pale smoke may fall faster than 1/wavelength',
} satisfies Sourced;

/** Power of the wavelength by which specific extinction of soot falls. */
export const wavelengthPower = {
  value: 1,
  range: [1, 1.0088],
  unit: '1',
  source: 'Widmann, Combustion Science and Technology, 2003: 4.8081 m2/g at 1 um, falling with wavelength^1.0088',
  seen: 'read',
  note: 'figures read in an open program for smoke measurement (FireDynamics/LEDSmokeAnalysis), paper not seen; rounded to 1',
} satisfies Sourced;

/** What a beam of the usual wavelength sees of the extinction at 633 nm. */
export const infraredShare = {
  value: 0.7193181818181819,
  unit: '1',
  source: '633 nm / 880 nm, extinction falling as 1/wavelength',
  seen: 'derived',
  note: 'leaving it out overrates what the beam sees: unsafe',
} satisfies Sourced;
