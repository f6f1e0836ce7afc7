import { relativeRate } from './accumulation.js';
import type { Draws } from './draws.js';
import type { WeighedLaw } from './laws.js';
import type { ClockedReadings } from './readings.js';

/*
 * When a loss that goes on gathering first reaches a level: many futures, each by a law taken as often as it is
 * believed, from a state drawn from what that law leaves open. Dirt does not go by itself, so no day's gain is negative.
 */

/** Where futures are to go. */
export interface Course {
  /** Loss to be reached [dB]. */
  readonly level: number;
  /** How far that level may be off [dB]. */
  readonly spread: number;
  /** How far to look [days after the last reading]. */
  readonly horizon: number;
  /** How many futures. */
  readonly futures: number;
}

/**
 * Draws when the level is first reached.
 *
 * @returns days after the last reading, rising; Infinity where it is not reached within the horizon
 */
export function firstPassages(
  laws: readonly WeighedLaw[],
  readings: ClockedReadings,
  course: Course,
  draw: Draws,
): Float64Array {
  const passages = new Float64Array(course.futures);
  let [row, passed] = [0, laws[0]?.weight ?? 0];
  for (let future = 0; future < course.futures; future++) {
    const place = (future + 0.5) / course.futures; // evenly through the weights: each law gets its share
    while (place > passed && row < laws.length - 1) passed += laws[++row]?.weight ?? 0;
    passages[future] = firstPassage(laws[row] as WeighedLaw, readings, course, draw);
  }
  return passages.sort();
}

function firstPassage(law: WeighedLaw, readings: ClockedReadings, course: Course, draw: Draws): number {
  const { horizon } = course;
  const level = course.level + course.spread * draw.normal();
  const { clock, pilot, ground } = readings;
  const from = readings.days.at(-1)?.at ?? 0;
  let { loss, departure, rate } = drawnState(law, draw);
  if (loss >= level) return 0;
  const unrest = law.wander * pilot;
  const stride = Math.max(1, Math.min(7, (level - loss) / rate / 100)); // longer steps where the day is far off
  const kept = Math.exp(-stride / law.memory);
  const renewed = unrest * Math.sqrt(1 - kept * kept);
  for (let after = 0; after < horizon; after += stride) {
    const work = clock(from + after + stride) - clock(from + after);
    const shape = relativeRate(law.shape, Math.max(0, loss - ground)) / law.scale;
    const mean = work * shape * Math.max(0, rate + departure);
    const gain = mean > 0 && law.burst > 0 ? draw.gamma(mean, work * pilot ** 2 * law.burst) : mean;
    if (loss + gain >= level) return after + (stride * (level - loss)) / gain;
    loss += gain;
    departure = departure * kept + renewed * draw.normal();
  }
  return Number.POSITIVE_INFINITY;
}

/** A state from the normal distribution that the law leaves open, with a rate above 0. */
function drawnState({ state, covariance }: WeighedLaw, draw: Draws): { loss: number; departure: number; rate: number } {
  const [loss, departure, rate] = state;
  const [ll, ld, lr, dd, dr, rr] = covariance;
  // Square root of the covariance with the rate first, since it alone is drawn again until it is above 0.
  const r = Math.sqrt(Math.max(rr, 0));
  const [fromRate, lossFromRate] = r > 0 ? [dr / r, lr / r] : [0, 0];
  const d = Math.sqrt(Math.max(dd - fromRate ** 2, 0));
  const lossFromDeparture = d > 0 ? (ld - fromRate * lossFromRate) / d : 0;
  const l = Math.sqrt(Math.max(ll - lossFromRate ** 2 - lossFromDeparture ** 2, 0));
  let u = draw.normal();
  for (let attempt = 0; attempt < 20 && rate + r * u <= 0; attempt++) u = draw.normal();
  const v = draw.normal();
  return {
    loss: loss + lossFromRate * u + lossFromDeparture * v + l * draw.normal(),
    departure: departure + fromRate * u + d * v,
    rate: Math.max(rate + r * u, r / 100, 1e-9),
  };
}
