import { studentProbability } from './distributions/student.js';
import { mean } from './moments.js';
import { present } from './present.js';

/** Whether the mean changed from one sample to another. */
export interface TwoSampleT {
  readonly meanBefore: number;
  readonly meanAfter: number;
  /** Standard deviation about the two means, pooled [unit of the values]. */
  readonly pooledSpread: number;
  /** Change of the mean over its standard error. */
  readonly t: number;
  readonly degreesOfFreedom: number;
  /** Chance of so large a change either way where nothing changed. */
  readonly p: number;
}

/**
 * Student's test of two samples whose spread is taken to be the same.
 *
 * @param before values, NaN where missing (left out)
 * @param after values, NaN where missing
 * @returns NaN for what too few values cannot tell
 *
 * Takes the values as independent. Source: 40 CFR 60 Appendix C, section 5.
 * @example twoSampleT([100, 95, 110], [115, 120, 125]).t // 3.479
 */
export function twoSampleT(before: ArrayLike<number>, after: ArrayLike<number>): TwoSampleT {
  const [first, second] = [present(before), present(after)];
  const [meanBefore, meanAfter] = [mean(first), mean(second)];
  const squares = (values: Float64Array, middle: number) =>
    values.reduce((sum, value) => sum + (value - middle) ** 2, 0);
  const degreesOfFreedom = Math.max(first.length + second.length - 2, 0);
  const pooledSpread = Math.sqrt((squares(first, meanBefore) + squares(second, meanAfter)) / degreesOfFreedom);
  const t = (meanAfter - meanBefore) / (pooledSpread * Math.sqrt(1 / first.length + 1 / second.length));
  return {
    meanBefore,
    meanAfter,
    pooledSpread,
    t,
    degreesOfFreedom,
    p: 2 * studentProbability(-Math.abs(t), degreesOfFreedom),
  };
}
