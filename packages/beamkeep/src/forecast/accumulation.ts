import type { DailyLoss } from './dailyLoss.js';
import type { ClockedReadings } from './readings.js';

/*
 * How dirt gathers, as a family of laws, and how well one of them explains what was read.
 *
 * Grains that settle independently of those already there each take their share of what light is left: the loss in dB
 * grows at a steady rate, where obscuration bends over. Those who keep solar panels let obscuration itself grow steadily
 * (pvlib.soiling.kimber; RdTools after Deceglie, Micheli and Muller, 2018). Measured mirrors under one sky (M. Cholette,
 * mirror_soiling_data, 2023) do not part the two, so both are laws here, and one half-way. About that rate
 *
 *     gain of a day = rate · shape(loss) · (1 + wander) + bursts     days counted by the soiling clock
 *     shape         = 1, or falling to 0 at a ceiling (dust comes off as fast as it settles), or rising with the loss
 *     wander        = weeks dirtier than others, forgotten over `memory` days
 *     bursts        = days that differ, and dirt that comes now and then, in lumps of what `burst` days bring
 *     reading       = loss + noise of a daily median
 *
 * Given a law all is linear and normal, and one pass of a Kalman filter gives the likelihood of the readings and what
 * loss, wander and rate may be at the last of them. A break starts a new run: the loss is then whatever is read, while
 * rate and wander go on.
 *
 * Source of the filter: Kalman, "A new approach to linear filtering and prediction problems", 1960 (from memory).
 */

/** How the rate depends on the dirt already there. */
export type Shape =
  | { readonly kind: 'steady' }
  /** Falls evenly to nothing at a ceiling [dB]. */
  | { readonly kind: 'ceiling'; readonly at: number }
  /** It is obscuration that grows steadily (share 1), so the loss in dB does so faster and faster; below 1: in part. */
  | { readonly kind: 'obscuration'; readonly share: number }
  /** An aim that creeps away steadily: loss goes with the square of the angle, its rate with the angle. */
  | { readonly kind: 'creep' };

/** One law of the family. */
export interface Law {
  readonly shape: Shape;
  /** Spread of the rate from week to week, as a share of it. */
  readonly wander: number;
  /** Days after which a dirtier spell is forgotten [days]. */
  readonly memory: number;
  /** Size of a lump, as days of the usual growth [days]; 0: no bursts. */
  readonly burst: number;
  /** Spread of a daily reading [dB]. */
  readonly noise: number;
}

/** What a law makes of the readings. */
export interface Explanation {
  /** Natural logarithm of their likelihood. */
  readonly fit: number;
  /** At the last of them: loss [dB], departure of the rate from its mean [dB/day], mean rate [dB/day]. */
  readonly state: readonly [loss: number, departure: number, rate: number];
  /** Covariance of the state: loss-loss, loss-departure, loss-rate, departure-departure, departure-rate, rate-rate. */
  readonly covariance: readonly [number, number, number, number, number, number];
  /** Mean of the shape over the readings: a rate is divided by it, so that laws compare. */
  readonly scale: number;
}

/** Relative rate at an amount of dirt [dB, 0 or more], before scaling. */
export function relativeRate(shape: Shape, soil: number): number {
  if (shape.kind === 'ceiling') return Math.max(0, 1 - soil / shape.at);
  if (shape.kind === 'obscuration') return 10 ** ((shape.share * soil) / 10);
  if (shape.kind === 'creep') return Math.sqrt(Math.max(soil, leastCreep));
  return 1;
}

/** Loss from which a creeping aim is reckoned [dB]: at no loss at all it would never begin to move. */
const leastCreep = 0.02;

/** How a shape lets the days of the readings count. Columns of equal length, one row a day: the step from the day before. */
export interface Pace {
  /** Days by the soiling clock [days]. */
  readonly work: Float64Array;
  /** The same times the shape, so that a steady rate gains `rate · step` [days]. */
  readonly step: Float64Array;
  /** Mean of the shape over the readings, by which `step` is divided so that rates compare. */
  readonly scale: number;
}

/** Pace of the readings under a shape. */
export function paceOf(shape: Shape, { days, soil, clock }: ClockedReadings): Pace {
  const work = new Float64Array(days.length);
  const step = new Float64Array(days.length);
  let shaped = 0;
  let worked = 0;
  for (let row = 1; row < days.length; row++) {
    const before = days[row - 1] as DailyLoss;
    const now = days[row] as DailyLoss;
    const length = clock(now.at) - clock(before.at);
    work[row] = length;
    step[row] = length * relativeRate(shape, soil[row - 1] as number);
    if (now.run !== before.run) continue;
    shaped += step[row] as number;
    worked += length;
  }
  const scale = shaped / worked;
  return { work, step: step.map((days) => days / scale), scale };
}

/**
 * What one law makes of the readings.
 *
 * @param pace of the readings under the law's shape, where it is known already
 */
export function explanation(law: Law, readings: ClockedReadings, pace = paceOf(law.shape, readings)): Explanation {
  const { days, pilot } = readings;
  const noise = law.noise ** 2;
  const unrest = (law.wander * pilot) ** 2;
  const lumps = pilot ** 2 * law.burst;
  let loss = days[0]?.loss ?? 0;
  let departure = 0;
  let rate = pilot;
  let ll = noise;
  let ld = 0;
  let lr = 0;
  let dd = unrest;
  let dr = 0;
  let rr = pilot ** 2;
  let fit = 0;
  for (let row = 1; row < days.length; row++) {
    const before = days[row - 1] as DailyLoss;
    const now = days[row] as DailyLoss;
    const broken = now.run !== before.run;
    if (broken) {
      loss = now.loss;
      ll = noise;
      ld = 0;
      lr = 0;
    } else {
      const step = pace.step[row] as number;
      loss += step * (departure + rate);
      ll += 2 * step * (ld + lr) + step * step * (dd + 2 * dr + rr) + (pace.work[row] as number) * lumps;
      ld += step * (dd + dr);
      lr += step * (dr + rr);
    }
    const kept = Math.exp(-(now.at - before.at) / law.memory);
    departure *= kept;
    ld *= kept;
    dr *= kept;
    dd = dd * kept * kept + unrest * (1 - kept * kept);
    if (broken) continue;
    const surprise = now.loss - loss;
    const variance = ll + noise;
    fit -= 0.5 * (Math.log(2 * Math.PI * variance) + (surprise * surprise) / variance);
    const gainLoss = ll / variance;
    const gainDeparture = ld / variance;
    const gainRate = lr / variance;
    loss += gainLoss * surprise;
    departure += gainDeparture * surprise;
    rate += gainRate * surprise;
    dd -= gainDeparture * ld;
    dr -= gainDeparture * lr;
    rr -= gainRate * lr;
    ld -= gainLoss * ld;
    lr -= gainLoss * lr;
    ll -= gainLoss * ll;
  }
  return { fit, state: [loss, departure, rate], covariance: [ll, ld, lr, dd, dr, rr], scale: pace.scale };
}
