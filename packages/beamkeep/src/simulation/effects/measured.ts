import { rowAt, second, UsageError } from '../../columns/index.js';
import type { Scene } from '../scene.js';
import type { Part } from './part.js';

/*
 * A measured curve laid over a simulated beam. Curves come per metre; how much of the beam stands in the smoke is a
 * choice. Where the curve ends the loss is held (measured smoke stays for minutes) and then clears slowly.
 */

/** A curve of smoke as it was measured. */
export interface MeasuredCurve {
  /** Seconds from the curve's own start, rising. */
  readonly seconds: readonly number[];
  /** Transmittance of one metre, 0 to 1; NaN where missing. */
  readonly perMetre: readonly number[];
}

/** A measured curve in a beam. */
export interface Measured {
  readonly effect: 'measured';
  readonly curve: MeasuredCurve;
  /** When the curve's start falls [ms]. */
  readonly from: number;
  /** Length of smoke that the light crosses [m]; twice the width of the smoke when reflected. */
  readonly metres: number;
  /** How long the last value is held [s]. */
  readonly held: number;
  /** How long it then takes to clear to a third [s]; infinite: it hangs. */
  readonly clears: number;
}

/**
 * Loss of a beam by a measured curve [dB], 0 before it and never below 0 (drift above clean air is capped).
 *
 * @param curve transmittance per metre over time
 * @param metres length of smoke that the light crosses [m], above 0
 * @returns a function of the seconds since the curve's start; NaN samples of the curve are bridged
 * @throws UsageError for a length that is not above 0 or a curve without a value
 */
export function curveLoss({ seconds, perMetre }: MeasuredCurve, metres: number): (at: number) => number {
  if (!(metres > 0)) throw new UsageError(`curveLoss: ${metres} m of smoke must be above 0`);
  const points = seconds.flatMap((at, i) => {
    const share = perMetre[i] ?? Number.NaN;
    return Number.isNaN(share)
      ? []
      : [{ at, loss: Math.min(60, Math.max(0, -10 * metres * Math.log10(Math.max(share, 1e-6)))) }];
  });
  const [first] = points;
  if (!first) throw new UsageError('curveLoss: the curve holds no value');
  return (at) => {
    if (at <= first.at) return at < first.at ? 0 : first.loss;
    let low = 0;
    let high = points.length - 1;
    while (high - low > 1) {
      const middle = (low + high) >>> 1;
      if ((points[middle]?.at ?? 0) <= at) low = middle;
      else high = middle;
    }
    const [a, b] = [points[low] ?? first, points[high] ?? first];
    const share = Math.min(1, Math.max(0, (at - a.at) / Math.max(b.at - a.at, 1e-9)));
    return a.loss * (1 - share) + b.loss * share;
  };
}

/** What a measured curve does to a beam. */
export function measured(plan: Measured, { time }: Scene): Part<Measured> {
  const loss = new Float32Array(time.length);
  const of = curveLoss(plan.curve, plan.metres);
  const end = plan.curve.seconds[plan.curve.seconds.length - 1] ?? 0;
  const lasts = end + plan.held + (Number.isFinite(plan.clears) ? 7 * plan.clears : Number.POSITIVE_INFINITY);
  const to = plan.from + lasts * second;
  for (let i = rowAt(time, plan.from); i < time.length && (time[i] as number) <= to; i++) {
    const seconds = ((time[i] as number) - plan.from) / second;
    const past = Math.max(0, seconds - end - plan.held);
    loss[i] = of(Math.min(seconds, end)) * Math.exp(-past / plan.clears);
  }
  return { effect: plan, cause: 'smoke-like', windows: [{ from: plan.from, to }], loss };
}
