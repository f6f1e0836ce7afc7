/**
 * When a loss has been at or above a threshold for a whole delay without a break: the rule of the equipment, without
 * the blocked beam.
 *
 * @param loss one value a second, from 0 s on; NaN is not known and breaks the hold
 * @param threshold in the unit of `loss`
 * @param delaySeconds [s], 0 or more
 * @returns [s]; infinite where it never is
 */
export function firstHeld(loss: Float64Array, threshold: number, delaySeconds: number): number {
  let since = Number.NaN;
  for (let second = 0; second < loss.length; second++) {
    if (!((loss[second] as number) >= threshold)) since = Number.NaN;
    else if (Number.isNaN(since)) since = second;
    if (second - since >= delaySeconds) return second;
  }
  return Number.POSITIVE_INFINITY;
}
