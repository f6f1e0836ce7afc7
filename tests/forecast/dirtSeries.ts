import { random } from './random.js';

/*
 * Invented courses of dirt with the day that is to be forecast, to see how far forecasts are off. They are made by other
 * rules than those that the forecast thinks in: the rate wanders log-normally hour by hour, bursts have exponential
 * sizes, readings carry a wobble of days beside their noise, some come on a coarse scale. A record ends after half to
 * four fifths of the way.
 */

/** Ways in which dirt gathers. */
export const kinds = ['linear', 'work-day', 'saturating', 'bursts'] as const;
export type Kind = (typeof kinds)[number];

/** One course, seen until its record ends. */
export interface DirtSeries {
  /** Noons [ms]. */
  readonly time: Float64Array;
  /** Daily loss [dB]. */
  readonly loss: Float64Array;
  /** Obscuration that ends the margin [%]. */
  readonly alarmThreshold: number;
  /** End of the record [days]. */
  readonly end: number;
  /** When it is reached [days]; undefined: never. */
  readonly reached: number | undefined;
}

const dayMs = 86_400_000;
const stepsADay = 4;
const longest = 2000; // days

/** A course of dirt of one kind; the same seed gives the same. */
export function dirtSeries(kind: Kind, seed: number): DirtSeries {
  const draw = random(seed * 31 + kinds.indexOf(kind));
  const alarmThreshold = draw.oneOf([25, 35, 50]);
  const margin = -10 * Math.log10(1 - alarmThreshold / 100);
  const course = dirtCourse(kind, margin, draw);
  const at = course.findIndex((loss) => loss >= margin);
  const reached = at < 0 ? undefined : at / stepsADay;
  const end = Math.max(14, reached === undefined ? draw.between(60, 200) : reached * draw.between(0.5, 0.8));
  return { ...read(course, end, draw), alarmThreshold, end, reached };
}

/** Loss by dirt, four times a day [dB]. */
function dirtCourse(kind: Kind, margin: number, draw: ReturnType<typeof random>): Float64Array {
  const rate = margin / draw.between(60, 250);
  const [unrest, memory] = [draw.between(0.05, 0.35), draw.between(2, 20)];
  const ceiling = kind === 'saturating' ? margin * draw.between(0.8, 2.5) : Number.POSITIVE_INFINITY;
  const sunday = draw.below(7);
  const [burstShare, burstEvery] = kind === 'bursts' ? [draw.between(0.4, 0.9), draw.between(4, 15)] : [0, 1];
  const kept = Math.exp(-1 / stepsADay / memory);
  let [loss, mood] = [margin * draw.between(0, 0.05), draw.normal()];
  return Float64Array.from({ length: longest * stepsADay }, (_, step) => {
    const now = loss;
    const weekday = (Math.floor(step / stepsADay) + sunday) % 7;
    const pace = kind !== 'work-day' ? 1 : weekday >= 5 ? 0 : 7 / 5;
    const steady = (rate * pace * Math.exp(unrest * mood - unrest ** 2 / 2)) / stepsADay;
    const burst = draw.between(0, 1) < 1 / stepsADay / burstEvery ? rate * burstEvery * draw.exponential() : 0;
    loss += (1 - loss / ceiling) * (steady * (1 - burstShare) + burst * burstShare);
    mood = mood * kept + Math.sqrt(1 - kept ** 2) * draw.normal();
    return now;
  });
}

/** Noon readings until the record ends: noise of a daily median, a wobble of some days, lost days, coarse scales. */
function read(course: Float64Array, end: number, draw: ReturnType<typeof random>): Pick<DirtSeries, 'time' | 'loss'> {
  const noise = draw.logBetween(0.0008, 0.012);
  const wobble = draw.logBetween(0.0005, 0.012);
  const scale = draw.oneOf([0, 0, 0, 0.0044, 0.0044, 0.044]);
  const kept = Math.exp(-1 / 3);
  let sway = draw.normal();
  const time: number[] = [];
  const loss: number[] = [];
  for (let at = 0.5; at <= end; at++) {
    sway = sway * kept + Math.sqrt(1 - kept ** 2) * draw.normal();
    if (draw.between(0, 1) < 0.02) continue;
    const value = (course[at * stepsADay] as number) + noise * draw.normal() + wobble * sway;
    time.push(at * dayMs);
    loss.push(scale === 0 ? value : Math.round(value / scale) * scale);
  }
  return { time: Float64Array.from(time), loss: Float64Array.from(loss) };
}
