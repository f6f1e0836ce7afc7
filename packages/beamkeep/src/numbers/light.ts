import type { Sourced } from './sourced.js';

/** Wavelength of a beam whose site file names none. */
export const usualWavelength = {
  value: 880,
  range: [850, 950],
  unit: 'nm',
  source: 'common practice, no source',
  seen: 'common practice',
} satisfies Sourced;

/** Loss of a Gaussian lobe at its half-power half-angle: the factor before (angle / half-angle) squared. */
export const halfPowerLoss = {
  value: 3.010299956639812,
  unit: 'dB',
  source: '10 log10(2), from the definition of half power',
  seen: 'derived',
} satisfies Sourced;

/** The antenna rule's factor before (angle / full half-power width) squared. */
export const pointingFactor = {
  value: 12,
  unit: 'dB',
  source: 'Maral and Bousquet, Satellite Communications Systems',
  clause: 'p. 27',
  edition: '3rd edition',
  seen: 'read',
  note: 'rounded: a Gaussian has 40 log10(2) = 12.0412. It counts the full width; in half-angles the factor is a quarter',
} satisfies Sourced;

/** How far from the peak the quadratic holds, as a share of the full half-power width. */
export const pointingReach = {
  value: 0.5,
  unit: 'full half-power widths',
  source: 'Journal of Electronic Defense, October 2016, on antenna pointing loss',
  seen: 'read',
} satisfies Sourced;

/** Half-angle of emitting and receiving lobe in one head, over that of either alone. */
export const twoLobes = {
  value: Math.SQRT1_2,
  unit: '1',
  source: 'losses of two equal Gaussian lobes add in decibels',
  seen: 'derived',
} satisfies Sourced;

/** Half width at half power of a Gaussian spot exp(-2 r^2/w^2), over w. */
export const gaussianHalfWidth = {
  value: 0.5887050112577373,
  unit: 'w',
  source: 'exp(-2 r^2/w^2) = 1/2, from the definition of w',
  seen: 'derived',
} satisfies Sourced;

/** Power of distance by which light returns from a reflector smaller than the spot. */
export const overfilledRangePower = {
  value: 4,
  unit: '1',
  source: 'CIE S 017:2020, 17-24-103 (coefficient of retroreflection) with the inverse square twice',
  seen: 'derived',
} satisfies Sourced;

/** Largest power of distance by which light returns from a reflector larger than the spot, or comes one way. */
export const filledRangePower = {
  value: 2,
  unit: '1',
  source: 'inverse square of distance, from the geometry of a diverging beam',
  seen: 'derived',
} satisfies Sourced;
