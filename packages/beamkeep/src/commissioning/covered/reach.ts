import { percentToDecibels } from '../../attenuation/index.js';
import { residueCaution, residueRatio } from '../../numbers/index.js';
import { reached } from '../../response/index.js';

/** What a threshold means to equipment that cannot read every obscuration. */
export interface Reach {
  /** As set [%]. */
  readonly threshold: number;
  /** `no`: never; `doubtful`: within the limits of the measurement. */
  readonly reachable: 'yes' | 'no' | 'doubtful';
  /** True obscuration at which the equipment reads the threshold [%]; NaN where it never does. */
  readonly trueObscuration: number;
  /** The threshold as set [dB]. */
  readonly decibels: number;
  /** True loss at which the equipment reads the threshold [dB]; Infinity where only darkness will do, NaN where never. */
  readonly trueDecibels: number;
  /** How many times more smoke that is than the threshold says. */
  readonly timesTheSmoke: number;
  /** `refuse`: it cannot be reached for certain, or needs far more smoke than it says; `caution`: a tenth more or so. */
  readonly verdict: 'fit' | 'caution' | 'refuse';
}

/**
 * What a threshold means where the largest obscuration that can be read is less than all.
 *
 * @param threshold as set [%]
 * @param against `smoke`: what matters is how much true smoke it needs; `block`: whether darkness reaches it
 * @param largest largest obscuration that the equipment can read [%]
 * @param least lower limit of that [%]; the same when left out
 * @param most upper limit of that [%]; the same when left out
 * @example reachOf(35, 'smoke', 50) // 70 % of true smoke, 2.8 times the smoke: refuse
 */
export function reachOf(
  threshold: number,
  against: 'smoke' | 'block',
  largest: number,
  least = largest,
  most = largest,
): Reach {
  const reachable = reached(least, threshold) ? 'yes' : reached(most, threshold) ? 'doubtful' : 'no';
  const trueObscuration = reached(largest, threshold) ? Math.min((100 * threshold) / largest, 100) : Number.NaN;
  const decibels = percentToDecibels(threshold);
  const trueDecibels = percentToDecibels(trueObscuration);
  const timesTheSmoke = trueObscuration === threshold ? 1 : trueDecibels / decibels;
  const verdict =
    reachable !== 'yes' || (against === 'smoke' && !(timesTheSmoke < residueRatio.value))
      ? 'refuse'
      : against === 'smoke' && timesTheSmoke >= residueCaution.value
        ? 'caution'
        : 'fit';
  return { threshold, reachable, trueObscuration, decibels, trueDecibels, timesTheSmoke, verdict };
}
