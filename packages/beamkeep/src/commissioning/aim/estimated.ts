import type { Estimate, Lobe, LobeFit } from '../../optics/index.js';
import { studentQuantile } from '../../statistics/index.js';

/** Small change by which a slope is measured, as a share of what is changed. */
const nudge = 1e-4;

/** The lobe with one of its fitted numbers changed, in the order of the fit's covariance, and the unit of that change. */
function nudges(lobe: Lobe): { readonly unit: number; readonly nudged: (by: number) => Lobe }[] {
  const changed = (list: readonly number[], at: number, value: number) =>
    list.map((old, k) => (k === at ? value : old));
  const { peak, floor, centre, halfAngle, power } = lobe;
  return [
    { unit: peak, nudged: (by) => ({ ...lobe, peak: peak + by }) },
    { unit: peak, nudged: (by) => ({ ...lobe, floor: floor + by }) },
    ...centre.map((value, k) => ({
      unit: halfAngle[k] as number,
      nudged: (by: number) => ({ ...lobe, centre: changed(centre, k, value + by) }),
    })),
    ...halfAngle.map((value, k) => ({
      unit: 1,
      nudged: (by: number) => ({ ...lobe, halfAngle: changed(halfAngle, k, value * Math.exp(by)) }),
    })),
    { unit: 1, nudged: (by) => ({ ...lobe, power: power * Math.exp(by) }) },
  ];
}

/**
 * A quantity drawn from a fitted lobe, with limits from the doubt about the lobe: the first-order law of error
 * propagation over the covariance of the fit.
 *
 * @param fit of the aim scan
 * @param quantity what is drawn from the lobe; endless and missing values have no limits of their own
 */
export function estimated(fit: LobeFit, quantity: (lobe: Lobe) => number): Estimate {
  const value = quantity(fit.lobe);
  if (!Number.isFinite(value)) return { value, low: value, high: value };
  const slopes = nudges(fit.lobe)
    .slice(0, fit.covariance.length)
    .map(({ unit, nudged }) => {
      const by = nudge * unit;
      return (quantity(nudged(by)) - quantity(nudged(-by))) / (2 * by);
    });
  let variance = 0;
  for (const [i, row] of fit.covariance.entries())
    for (const [j, entry] of row.entries()) variance += (slopes[i] as number) * (slopes[j] as number) * entry;
  const freedom = Math.max(fit.n - fit.covariance.length, 1);
  const reach = studentQuantile((1 + fit.confidence) / 2, freedom) * Math.sqrt(Math.max(variance, 0));
  return { value, low: value - reach, high: value + reach };
}
