import { hour } from '../columns/index.js';
import type { GainControl } from './scenario.js';

/**
 * Gain with which equipment slowly brings its reading back to clean air [dB], sample by sample.
 *
 * The gain follows the loss with a time constant of hours to days, so that smoke and blocks pass through almost
 * whole while dirt is hidden, until the limit is reached.
 *
 * @param control how slow, and how much at most
 * @param time instants [ms]
 * @param level level before gain [share of clean air]
 */
export function gainOf({ hours, limitDecibels }: GainControl, time: Float64Array, level: Float64Array): Float64Array {
  const gain = new Float64Array(time.length);
  let now = 0;
  for (let i = 0; i < time.length; i++) {
    const passed = i === 0 ? 0 : ((time[i] as number) - (time[i - 1] as number)) / hour;
    const missing = -10 * Math.log10(Math.max(level[i] as number, 1e-3)) - now;
    // It trusts no sudden loss: what stands more than 3 dB off is followed no faster than 3 dB would be.
    const followed = Math.max(-3, Math.min(3, missing));
    now += followed * (1 - Math.exp(-passed / hours));
    now = Math.max(-0.5, Math.min(limitDecibels, now));
    gain[i] = now;
  }
  return gain;
}
