import { day, hour } from '../../columns/index.js';
import { type WorkCalendar, works } from '../calendar.js';
import type { LocalClock } from '../clock.js';
import { random } from '../random.js';
import type { Scene } from '../scene.js';
import type { Part } from './part.js';

/*
 * Dirt on the reflector and the optics. Obscuration o grows by
 *
 *     do = rate · pace(t) · (1 - o / most) dt + bursts       or, where each grain takes its share of what light is left,
 *     do = (1 - o) · (the same)
 *
 * so that one law is straight growth (most infinite), growth that levels off, growth on work days only and growth by
 * bursts of a few hours. A cleaning leaves a residue. What a reflective beam loses to its reflector's film holds both
 * crossings already.
 */

/** A cleaning, by hand or by rain. */
export interface Cleaning {
  /** [ms] */
  readonly time: number;
  /** Share of the dirt that stays, 0 to 1. */
  readonly leaves: number;
  readonly by: 'hand' | 'rain';
}

/** Dirt, as obscuration [%]. */
export interface Dirt {
  readonly effect: 'dirt';
  /** Name of the stream of chance. */
  readonly stream: string;
  /** When it begins to settle [ms]; the log's start when left out. */
  readonly from?: number;
  /** On the optics when the log begins [%]. */
  readonly before: number;
  /** [%/day], of clean air or of what light is left */
  readonly rate: number;
  /** What grows steadily; obscuration when left out. */
  readonly grows?: 'obscuration' | 'decibels';
  /** Where it levels off [%]; left out: nowhere. */
  readonly most?: number;
  /** Whether it settles on work days only. */
  readonly workDaysOnly: boolean;
  /** Share of the rate that comes in bursts, 0 to 1. */
  readonly bursts: number;
  /** Spread of the daily rate about its mean (log-normal). */
  readonly uneven: number;
  readonly cleanings: readonly Cleaning[];
}

/** Obscuration by dirt over time, hour by hour, with the instants of cleaning exact. */
export interface DirtCourse {
  /** Obscuration at an instant, as a share. */
  at(instant: number): number;
  /** First instant after `from` at which it reaches a share; NaN when it does not within the course. */
  reaches(share: number, from: number): number;
}

const step = hour;

/** Where and when dirt settles. */
export interface DirtPlace {
  readonly seed: number;
  readonly clock: LocalClock;
  readonly calendar: WorkCalendar;
  /** Start of the log [ms]. */
  readonly start: number;
}

/** A scene as dirt sees it. */
export const dirtPlace = ({ seed, clock, scenario }: Scene): DirtPlace => ({
  seed,
  clock,
  calendar: scenario.calendar,
  start: scenario.start,
});

/** How dirt settles from the log's start to an instant that may lie long past the log's end. */
export function dirtCourse(plan: Dirt, place: DirtPlace, until: number): DirtCourse {
  const { seed, clock, calendar, start } = place;
  const draw = random(seed, plan.stream);
  const count = Math.ceil((until - start) / step) + 2;
  const course = new Float64Array(count);
  const most = (plan.most ?? Number.POSITIVE_INFINITY) / 100;
  let now = plan.before / 100;
  let [lastDay, pace, burstLeft, burstRate] = [Number.NaN, 0, 0, 0];
  let next = 0;
  for (let i = 0; i < count; i++) {
    course[i] = now;
    const instant = start + i * step;
    const localDay = clock.day(instant);
    if (localDay !== lastDay) {
      lastDay = localDay;
      const open = !plan.workDaysOnly || works(calendar, seed, localDay);
      pace = open ? Math.exp(plan.uneven * draw.normal() - plan.uneven ** 2 / 2) : 0;
    }
    const settling = plan.from === undefined || instant >= plan.from;
    const room = Math.max(0, 1 - now / most);
    let gained = settling ? ((plan.rate / 100) * pace * (1 - plan.bursts) * room * step) / day : 0;
    if (plan.bursts > 0) {
      // A burst every five days in the mean, of 4 to 36 h, holds five days' worth of its share.
      if (burstLeft <= 0 && draw.chance(step / (5 * day))) {
        burstLeft = draw.between(4, 36);
        burstRate = (5 * plan.bursts * (plan.rate / 100) * draw.exponential()) / burstLeft;
      }
      if (burstLeft > 0) {
        if (settling) gained += burstRate * room;
        burstLeft -= 1;
      }
    }
    now += plan.grows === 'decibels' ? (1 - now) * -Math.expm1(-gained) : gained;
    for (let cleaning = plan.cleanings[next]; cleaning && cleaning.time <= instant + step; ) {
      now *= cleaning.leaves;
      next += 1;
      cleaning = plan.cleanings[next];
    }
  }
  const at = (instant: number) => {
    const place = Math.max(0, Math.min((instant - start) / step, count - 1.001));
    const low = Math.floor(place);
    const [a, b] = [course[low] as number, course[low + 1] as number];
    const cleaning = plan.cleanings.find(({ time }) => time > start + low * step && time <= start + (low + 1) * step);
    if (!cleaning) return a + (b - a) * (place - low);
    return instant >= cleaning.time ? b : a;
  };
  return {
    at,
    reaches: (share, from) => {
      for (let i = Math.max(0, Math.floor((from - start) / step)); i < count; i++) {
        if ((course[i] as number) >= share) return start + i * step;
      }
      return Number.NaN;
    },
  };
}

/** What dirt does to a beam. */
export function dirt(plan: Dirt, scene: Scene): Part<Dirt> {
  const { time } = scene;
  const last = time[time.length - 1] ?? scene.scenario.start;
  const course = dirtCourse(plan, dirtPlace(scene), last + day);
  return {
    effect: plan,
    cause: 'contamination',
    windows: [{ from: plan.from ?? scene.scenario.start, to: last }],
    loss: Float32Array.from(time, (instant) => -10 * Math.log10(1 - Math.min(course.at(instant), 0.999))),
  };
}
