import type { Sourced } from './sourced.js';

/** Standard deviation over median absolute deviation, normal samples. */
export const normalOverMad = {
  value: 1.482602218505602,
  unit: '1',
  source: '1 over the 0.75 quantile of the standard normal distribution',
  seen: 'derived',
  note: 'scipy and statsmodels use the same',
} satisfies Sourced;

/** Standard deviation that rounding to a scale adds, over the scale's step. */
export const roundingSpread = {
  value: 0.2886751345948129,
  unit: 'steps',
  source: 'standard deviation of a uniform distribution one step wide',
  seen: 'derived',
} satisfies Sourced;
