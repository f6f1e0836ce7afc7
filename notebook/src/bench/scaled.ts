import type { Scale } from '../sheet/sheet.js';

/** Losses are drawn up to here [dB]: a beam that receives nothing has lost without end. */
export const lossCeiling = 40;

/**
 * A level on one of the scales of the plots.
 *
 * @param level share of clean air
 * @returns obscuration [%], level [%] or loss [dB], the last at most `lossCeiling`; NaN in, NaN out
 */
export function scaled(level: number, scale: Scale): number {
  if (scale === 'obscuration') return 100 * (1 - level);
  if (scale === 'level') return 100 * level;
  if (level <= 0) return lossCeiling;
  return Math.min(lossCeiling, -10 * Math.log10(level));
}

/** An obscuration [%] on one of the scales of the plots. */
export const scaledThreshold = (obscuration: number, scale: Scale): number => scaled(1 - obscuration / 100, scale);
