import type { Break } from '../../packages/beamkeep/src/forecast/index.js';
import { random } from './random.js';

/*
 * Invented courses of dirt with the day that is to be forecast, to see how far forecasts are off. They are made by other
 * rules than those that the forecast thinks in: the rate wanders log-normally, from day to day or over weeks, bursts have
 * exponential sizes, readings carry a wobble of days beside their noise, some come on a coarse scale, beams are cleaned
 * and knocked, and the daily low of the sway is told a little wrong. A record ends when a quarter to seven eighths of the margin are used.
 *
 * What dirt adds is one of two laws, since neither physics nor measurement has settled it: so many dB a day, or so much
 * obscuration a day.
 */

/** Ways in which dirt gathers. */
export const kinds = ['linear', 'work-day', 'saturating', 'bursts'] as const;
export type Kind = (typeof kinds)[number];

/** What grows steadily. */
export const growthLaws = ['decibels', 'obscuration'] as const;
export type GrowthLaw = (typeof growthLaws)[number];

/** One course, seen until its record ends. */
export interface DirtSeries {
  /** Noons [ms]. */
  readonly time: Float64Array;
  /** Daily loss [dB]. */
  readonly loss: Float64Array;
  /** Cleanings and knocks within the record. */
  readonly breaks: readonly Break[];
  /** Daily low of the sway, as it is told [dB]. */
  readonly dailyLow: number;
  /** Obscuration that ends the margin [%]. */
  readonly alarmThreshold: number;
  /** End of the record [days]. */
  readonly end: number;
  /** When dirt, with what a knock took, reaches it at the daily low [days]; undefined: never. */
  readonly reached: number | undefined;
}

type Draw = ReturnType<typeof random>;

const dayMs = 86_400_000;
const stepsADay = 4;
const longest = 3000; // days

/** A course of dirt of one kind; the same seed gives the same. */
export function dirtSeries(kind: Kind, law: GrowthLaw, seed: number): DirtSeries {
  const draw = random(seed * 31 + kinds.indexOf(kind) + 1e6 * growthLaws.indexOf(law));
  let series = drawn(kind, law, draw);
  while (!series) series = drawn(kind, law, draw);
  return series;
}

/** One course; undefined where little or nearly all of the margin is gone when the record ends. */
function drawn(kind: Kind, law: GrowthLaw, draw: Draw): DirtSeries | undefined {
  const alarmThreshold = draw.oneOf([25, 35, 50]);
  const sway = draw.chance(0.5) ? 0 : draw.between(0.02, 0.25);
  const margin = -10 * Math.log10(1 - alarmThreshold / 100) - sway;
  // How long it would take at the mean pace, and how long the record is, are drawn apart: which of the two is shorter
  // then says nothing that the readings do not.
  const usual = draw.logBetween(20, 800);
  const watched = Math.round(draw.logBetween(14, 250));
  const gain = gains(kind, (law === 'decibels' ? margin : 1 - 10 ** (-margin / 10)) / usual, draw);
  const course = new Float64Array(longest * stepsADay);
  const filling = { level: margin, law };
  fill(course, gain, { ...filling, from: 0, loss: margin * draw.between(0, 0.05) });
  let end = watched;
  const breaks: Break[] = [];
  if (draw.chance(0.35)) {
    const cleanedAt = Math.round(end * draw.between(0.3, 1));
    const left = (course[cleanedAt * stepsADay] as number) * draw.between(0, 0.35);
    fill(course, gain, { ...filling, from: cleanedAt, loss: left });
    breaks.push({ time: cleanedAt * dayMs, restoration: true });
    end = Math.max(cleanedAt + 6, end);
  } else if (draw.chance(0.15)) {
    const knockedAt = Math.round(end * draw.between(0.2, 0.8));
    const took = margin * draw.between(0.05, 0.25);
    for (let step = knockedAt * stepsADay; step < course.length; step++) course[step] = (course[step] as number) + took;
    breaks.push({ time: knockedAt * dayMs, restoration: false });
  }
  const used = (course[end * stepsADay] as number) / margin;
  if (used < 0.25 || used > 0.87) return undefined;
  const at = course.findIndex((loss, step) => step >= end * stepsADay && loss >= margin);
  return {
    ...read(course, end, draw),
    breaks,
    dailyLow: sway * draw.between(0.7, 1.2),
    alarmThreshold,
    end,
    reached: at < 0 ? undefined : at / stepsADay,
  };
}

/** What each step would add to a clean beam: wandering, rested, in bursts; with how much of it still settles. */
function gains(kind: Kind, rate: number, draw: Draw): { readonly rates: Float64Array; readonly room: Room } {
  const [unrest, memory] = draw.chance(0.5)
    ? [draw.between(0.05, 0.7), 0.7]
    : [draw.between(0.05, 0.3), draw.between(2, 20)];
  const ceiling = kind === 'saturating' ? draw.between(0.8, 2.5) : Number.POSITIVE_INFINITY;
  const sunday = draw.below(7);
  const [burstShare, burstEvery] = kind === 'bursts' ? [draw.between(0.4, 0.9), draw.between(4, 15)] : [0, 1];
  const kept = Math.exp(-1 / stepsADay / memory);
  let mood = draw.normal();
  const rates = Float64Array.from({ length: longest * stepsADay }, (_, step) => {
    const weekday = (Math.floor(step / stepsADay) + sunday) % 7;
    const pace = kind !== 'work-day' ? 1 : weekday >= 5 ? 0 : 7 / 5;
    const steady = (rate * pace * Math.exp(unrest * mood - unrest ** 2 / 2)) / stepsADay;
    const burst = draw.chance(1 / stepsADay / burstEvery) ? rate * burstEvery * draw.exponential() : 0;
    mood = mood * kept + Math.sqrt(1 - kept ** 2) * draw.normal();
    return steady * (1 - burstShare) + burst * burstShare;
  });
  return { rates, room: (share) => Math.max(0, 1 - share / ceiling) };
}

/** How much of a gain still settles where so much of the margin is used. */
type Room = (share: number) => number;

interface Filling {
  /** Where to begin [days], with what loss [dB]. */
  readonly from: number;
  readonly loss: number;
  /** Loss that ends the margin [dB]. */
  readonly level: number;
  readonly law: GrowthLaw;
}

/** Fills a course from a day on. */
function fill(course: Float64Array, { rates, room }: ReturnType<typeof gains>, filling: Filling): void {
  const { from, level, law } = filling;
  const obscured = (decibels: number): number => 1 - 10 ** (-decibels / 10);
  let { loss } = filling;
  for (let step = from * stepsADay; step < course.length; step++) {
    course[step] = loss;
    const rate = rates[step] as number;
    if (law === 'decibels') loss += rate * room(loss / level);
    else {
      const share = obscured(loss) + rate * room(obscured(loss) / obscured(level));
      loss = -10 * Math.log10(1 - Math.min(0.99, share));
    }
  }
}

/** Noon readings until the record ends: noise of a daily median, a wobble of some days, lost days, coarse scales. */
function read(course: Float64Array, end: number, draw: Draw): Pick<DirtSeries, 'time' | 'loss'> {
  const noise = draw.logBetween(0.0008, 0.012);
  const wobble = draw.logBetween(0.0005, 0.02);
  const scale = draw.oneOf([0, 0, 0, 0.0044, 0.0044, 0.044]);
  const kept = Math.exp(-1 / 3);
  let sway = draw.normal();
  const time: number[] = [];
  const loss: number[] = [];
  for (let at = 0.5; at <= end; at++) {
    sway = sway * kept + Math.sqrt(1 - kept ** 2) * draw.normal();
    if (draw.chance(0.02)) continue;
    const value = (course[at * stepsADay] as number) + noise * draw.normal() + wobble * sway;
    time.push(at * dayMs);
    loss.push(scale === 0 ? value : Math.round(value / scale) * scale);
  }
  return { time: Float64Array.from(time), loss: Float64Array.from(loss) };
}
