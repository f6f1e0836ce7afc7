import { day, minute, rowAt, type Stretch } from '../../columns/index.js';
import { solarHour } from '../families.js';
import type { Picture } from '../picture.js';
import { logistic } from '../wording.js';

/*
 * How likely a growth is smoke. It is told as smoke at any likelihood: this only says how sure that is. Three signs part
 * smoke from what grows like it: it takes much of the light, it clears slowly, and it does not come at hours at which the
 * beam dips on other days as well. A puff of dust, a gust of mist and a shake of the mount are slight, soon gone, or one of
 * many. Smoke that is vented at once is likelier than this says.
 */

/** What is measured of a stretch in which loss grew. */
export interface SmokeSigns {
  /** Greatest loss, share of clean air. */
  readonly lost: number;
  /** Longest time in which it may have cleared [ms]; infinite where it never did. */
  readonly clearing: number;
  /** Dips about the same solar hour on other days; of a log of more than 30 days, in 30 days. */
  readonly dipsAtThatHour: number;
}

/** Distance in the hour of the day within which another dip comes at the same hours [h]. Own choice. */
const sameHours = 3;
/** Length of log to which its dips are reckoned [ms]. Own choice. */
const dipsOf = 30 * day;

/**
 * Counts the dips of a beam about the hour of a stretch on other days; of a log of more than 30 days, in 30 days. As the
 * smoke rule has it, what comes at the same hours speaks against smoke only where it never was a fire signal.
 */
export function dipsAtHours({ view, excursions, fires }: Picture): (start: number, end: number) => number {
  const isFire = meets(fires);
  const habits = excursions
    .filter((e) => e.sign === 1 && !isFire(e))
    .map(({ start, end }) => (start + end) / 2)
    .sort((a, b) => a - b);
  const middles = Float64Array.from(habits);
  const hours = Float64Array.from(habits, (middle) => solarHour(view, middle)).sort();
  const share = Math.min(1, dipsOf / (view.to - view.from));
  return (start, end) => {
    const middle = (start + end) / 2;
    const about = hoursAbout(solarHour(view, middle));
    let alike = 0;
    for (const [from, to] of about) alike += rowAt(hours, to) - rowAt(hours, from);
    // Those of the same day are no other day's.
    for (let i = rowAt(middles, middle - day / 2); i < middles.length; i++) {
      const near = middles[i] as number;
      if (near > middle + day / 2) break;
      const hour = solarHour(view, near);
      if (about.some(([from, to]) => hour >= from && hour < to)) alike--;
    }
    return share * alike;
  };
}

/** The hours of a day about one of them, which may lie on either side of midnight. */
const hoursAbout = (hour: number): [from: number, to: number][] =>
  [-24, 0, 24].map((turn) => [hour + turn - sameHours, hour + turn + sameHours]);

/** Whether a stretch meets one of others, which come in order and do not overlap. */
function meets(others: readonly Stretch[]): (stretch: Stretch) => boolean {
  const ends = Float64Array.from(others, ({ end }) => end);
  return ({ start, end }) => (others[rowAt(ends, start)]?.start ?? Number.POSITIVE_INFINITY) <= end;
}

/** Loss and time to clear of a lone growth that is smoke as often as not. Own choice: the weighing does the rest. */
const evenLoss = 0.15;
const evenClearing = 30 * minute;
/** Clearing that takes longer is no likelier [ms]. Own choice. */
const longestClearing = day;

/**
 * How likely smoke is by its signs, 0 to 1: the odds grow with the loss and with the root of the time that it takes to
 * clear, and are shared with the dips at that hour. Own choice.
 */
export function smokeLikelihood({ lost, clearing, dipsAtThatHour }: SmokeSigns): number {
  const clears = Math.min(longestClearing, clearing);
  return logistic(Math.log(lost / evenLoss) + Math.log(clears / evenClearing) / 2 - Math.log(1 + dipsAtThatHour));
}
