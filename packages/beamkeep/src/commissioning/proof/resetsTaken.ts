import type { Excursion } from './excursions.js';
import type { ExpectedStep } from './expected.js';

/** A reset of a proof: its instant [ms], and whether it was written down or only must have been. */
export interface ResetTaken {
  readonly at: number;
  readonly told: boolean;
}

/**
 * Resets of a proof: those that were told, and for a reset step that nobody wrote down an instant in the clean air
 * that it stands in, so that later steps can be judged.
 *
 * @returns for each step the instant [ms] and whether it was told; undefined for steps that are no reset
 */
export function resetsTaken(
  expected: readonly ExpectedStep[],
  steps: readonly (Excursion | undefined)[],
  told: readonly number[],
  times: readonly number[],
  end: number,
): (ResetTaken | undefined)[] {
  const used = new Set<number>();
  return expected.map(({ step }, row) => {
    if (step.do !== 'reset') return undefined;
    const own = times[row] as number;
    if (!Number.isNaN(own)) return { at: own, told: true };
    const before =
      steps.slice(0, row).findLast((excursion) => excursion !== undefined)?.end ?? Number.NEGATIVE_INFINITY;
    const next = steps.slice(row).find((excursion) => excursion !== undefined)?.start ?? Number.POSITIVE_INFINITY;
    const known = told.find((at) => at > before && at < next && !used.has(at));
    if (known !== undefined) {
      used.add(known);
      return { at: known, told: true };
    }
    return Number.isFinite(before) ? { at: (before + Math.min(next, end)) / 2, told: false } : undefined;
  });
}
