/**
 * Frequency at which a vibration shows when it is sampled too seldom.
 *
 * @param frequency of the vibration
 * @param rate samples in the same unit of time
 * @returns 0 to half the rate; the frequency itself where that is below half the rate
 *
 * Source: |f - rate round(f / rate)|, derived.
 * @example aliasFrequency(24.3, 1) // 0.3
 */
export const aliasFrequency = (frequency: number, rate: number) =>
  Math.abs(frequency - rate * Math.round(frequency / rate));
