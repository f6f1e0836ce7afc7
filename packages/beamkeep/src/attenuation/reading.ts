/*
 * Three ways to say how much light a beam receives, each into each:
 *
 *     level      share of clean air        1 clean, 0 none     joined stretches multiply
 *     percent    obscuration               0 clean, 100 none
 *     decibels   loss, 10 log10(1/level)   0 clean, Infinity   joined stretches add
 *
 * These are readings, and a reading is never refused: sun, a cleaned reflector or a re-normalised gain bring more light
 * than clean air did, and that is a level above 1, a negative obscuration, a negative loss. No light, or less than
 * none (noise about the covered reading), is an infinite loss. NaN stays NaN. Amounts of smoke, which cannot be
 * negative, are converted with checks by `converted`.
 */

/**
 * Loss of a received level.
 *
 * @param level light received as a share of clean air, any number; 0 or less means no light
 * @returns loss [dB]: 0 in clean air, negative above it, Infinity without light; NaN in, NaN out
 * @example levelToDecibels(0.5) // 3.0103
 */
export function levelToDecibels(level: number): number {
  if (level <= 0) return Number.POSITIVE_INFINITY;
  return 0 - 10 * Math.log10(level); // from 0, so that clean air is 0 and not -0
}

/**
 * Received level of a loss.
 *
 * @param decibels loss [dB], any number; negative above clean air, Infinity without light
 * @returns share of clean air, 0 or more; NaN in, NaN out
 * @example decibelsToLevel(10) // 0.1
 */
export const decibelsToLevel = (decibels: number): number => 10 ** (-decibels / 10);

/**
 * Obscuration of a received level.
 *
 * @param level light received as a share of clean air, any number
 * @returns obscuration [%]: 0 in clean air, negative above it; NaN in, NaN out
 * @example levelToPercent(0.65) // 35
 */
export const levelToPercent = (level: number): number => 100 - 100 * level;

/**
 * Received level of an obscuration.
 *
 * @param percent obscuration [%], any number
 * @returns share of clean air; NaN in, NaN out
 * @example percentToLevel(35) // 0.65
 */
export const percentToLevel = (percent: number): number => (100 - percent) / 100;

/**
 * Loss of an obscuration.
 *
 * @param percent obscuration of the whole path [%], any number; 100 or more means no light
 * @returns loss [dB]: negative for a negative obscuration, Infinity from 100; NaN in, NaN out
 * @example percentToDecibels(35) // 1.8709
 */
export function percentToDecibels(percent: number): number {
  if (percent >= 100) return Number.POSITIVE_INFINITY;
  if (percent > 50) return -10 * Math.log10((100 - percent) / 100); // 100 - percent is exact here: deep losses keep their digits
  return (-10 / Math.LN10) * Math.log1p(-percent / 100); // thin smoke keeps its digits
}

/**
 * Obscuration of a loss.
 *
 * @param decibels loss of the whole path [dB], any number; negative above clean air
 * @returns obscuration [%]: exactly 0 for 0, 100 for Infinity; from about 160 dB it rounds to 100; NaN in, NaN out
 * @example decibelsToPercent(1) // 20.567
 */
export const decibelsToPercent = (decibels: number): number => -100 * Math.expm1((-Math.LN10 / 10) * decibels); // expm1: thin smoke keeps its digits
