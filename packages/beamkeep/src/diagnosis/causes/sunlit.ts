import { day, hour, type Stretch } from '../../columns/index.js';
import { median, standardDeviation } from '../../statistics/index.js';
import type { Excursion } from '../excursions.js';
import { hoursBetween, solarHour } from '../families.js';
import type { Kind, Picture } from '../picture.js';
import { logistic } from '../wording.js';
import { byDay } from './recurring.js';
import { type RoughStretch, shakingOrNoise } from './roughStretches.js';

/*
 * What the sun or a lamp does to the receiver: it raises the level, roughens it, or blinds the receiver, at an hour that
 * it keeps to from day to day. Where a receiver is blinded, a dip may look like an object or like smoke: what looks like
 * smoke stays smoke, whatever is told beside it.
 */

/** A stretch of one day. */
type Patch = Pick<Excursion, 'start' | 'end' | 'depth' | 'sign'>;

/** Stretches of light about one hour. */
export interface Sunlit {
  readonly days: readonly (readonly Patch[])[];
  /** Solar time about which they lie [h]. */
  readonly hour: number;
  /** Change of the level, or spread where it is roughened: median of the days, share of clean air. */
  readonly depth: number;
  /** From day to day, the least distance between begins, ends or middles [h]; undefined where no two days lie near. */
  readonly returns: number | undefined;
  /** Share of all such stretches that lie about the hour. */
  readonly share: number;
  readonly confidence: number;
}

/** Half of the width of the window of hours that one light keeps to through a season [h]. */
const reach = 2;

/** Hours about which it is asked: a noisy log has many more. Own choice. */
const mostHours = 2000;

/** The hour about which most of the given hours of the day lie. */
function busiestHour(hours: readonly number[]): number {
  let best = 0;
  let most = -1;
  for (const h of hours.slice(0, mostHours)) {
    let near = 0;
    for (const other of hours) if (hoursBetween(h, other) <= reach) near += 1 - hoursBetween(h, other) / (2 * reach);
    if (near > most) {
      most = near;
      best = h;
    }
  }
  return best;
}

/** Days between which the sun's hour hardly moves, and how many of a day's stretches are looked at: own choice. */
const fewDays = 10;
const mostOfDay = 2;
/** How near in their hours stretches of light on neighbouring days lie [h]: between simulated light and what else is sharp. */
const keepsTo = 0.15;
/** Share of such stretches in one window of hours from which they may lie wider apart. Own choice. */
const cloudy = 0.7;
/** Share of the confidence that is left where no two days lie near enough to show it: own choice. */
const unseen = 0.3;

/**
 * How nearly light comes back at its hour: from one day to the next that has it, the least distance between begins,
 * ends or middles [h], median. Clouds cut a stretch short at one end; they seldom move both. Undefined where no two
 * days lie near.
 */
function returnsWithin(picture: Picture, days: ReadonlyMap<number, readonly Patch[]>): number | undefined {
  const numbers = [...days.keys()].sort((a, b) => a - b);
  const marks = (number: number): (readonly number[])[] =>
    [...(days.get(number) ?? [])]
      .sort((a, b) => b.depth - a.depth)
      .slice(0, mostOfDay)
      .map(({ start, end }) => [start, end, (start + end) / 2].map((t) => solarHour(picture.view, t)));
  const apart: number[] = [];
  for (let k = 1; k < numbers.length; k++) {
    const [before, now] = [numbers[k - 1] as number, numbers[k] as number];
    if (now - before > fewDays) continue;
    const later = marks(now);
    const distances = marks(before).flatMap((a) =>
      later.flatMap((b) => a.map((hour, i) => hoursBetween(hour, b[i] as number))),
    );
    apart.push(Math.min(...distances));
  }
  return apart.length === 0 ? undefined : median(apart);
}

/** What is asked of stretches: days, share of them about one hour, and depth, that speak for light as much as against it. */
interface Asked {
  readonly days: number;
  readonly share: number;
  readonly depth: number;
  /**
   * How much wider apart they may lie where all such stretches of the log keep to one window of hours [h]: clouds leave
   * glints here and there within the hours of the sun.
   */
  readonly wider: number;
}

/** Of what looks like light, and of what looks like something else as well: own choice. */
const clear: Asked = { days: 2.6, share: 0.45, depth: 0, wider: 0.3 };
const doubtful: Asked = { days: 5, share: 0.75, depth: 0.05, wider: 0 };

/** The light among stretches that may be light. */
function lightAmong(picture: Picture, found: readonly Patch[], asked: Asked, chance = 1): Sunlit | undefined {
  const middle = ({ start, end }: Patch): number => solarHour(picture.view, (start + end) / 2);
  const hour = busiestHour(found.map(middle));
  const all = found.filter((patch) => hoursBetween(middle(patch), hour) <= reach);
  const days = byDay(picture, all);
  if (days.size < 3) return undefined;
  const depth = median([...days.values()].map((of) => Math.max(...of.map((patch) => patch.depth))));
  // By chance the window would hold its share of the day.
  const share = all.length / found.length;
  const returns = returnsWithin(picture, days);
  const near = keepsTo + asked.wider * Math.max(0, (share - cloudy) / (1 - cloudy));
  const confidence =
    0.97 *
    chance *
    (returns === undefined ? unseen : logistic(30 * (near - returns))) *
    logistic(1.2 * (days.size - asked.days)) *
    logistic(3.5 * (depth / Math.max(asked.depth, picture.slowLimit) - 1.2)) *
    logistic(12 * (share - asked.share));
  return { days: [...days.values()], hour, depth, returns, share, confidence };
}

/** Spreads beyond the usual that a sample at an end of a rough stretch stands off. Own choice. */
const standsOff = 3;

/** A rough stretch from its first to its last sample that stands off: it is found by whole runs of samples. */
function roughPatch({ depth, rough, view }: Picture, { from, to, spread }: RoughStretch): Patch {
  const least = Math.max(standsOff * rough.usual, 1.5 * view.quantum);
  let [first, last] = [from, to];
  while (first < last && Math.abs(depth[first] as number) < least) first++;
  while (last > first && Math.abs(depth[last] as number) < least) last--;
  return { start: view.trace.time[first] as number, end: view.trace.until[last] as number, depth: spread, sign: -1 };
}

/** Share of a spread under which a mean is not known, whatever the samples; own choice. */
const leastError = 0.04;

/**
 * How clearly the level stands raised in rough stretches, over what their mean is known to: light adds, noise does not.
 * From 2 it speaks for light as much as against it. Own choice.
 */
function raisedIn({ depth }: Picture, stretches: readonly RoughStretch[]): number {
  let [sum, rows] = [0, 1];
  for (const { from, to, spread } of stretches) {
    for (let i = from; i <= to; i++) sum -= (depth[i] as number) / spread;
    rows += to + 1 - from;
  }
  return sum / rows / Math.hypot(1 / Math.sqrt(rows), leastError);
}

/**
 * Fewest days that show a course through the season, least spread of the hours [intervals], spreads of chance, and longest
 * that a window lets the sun in [ms]: a shift is longer. Own choice.
 */
const season = { days: 6, moves: 0.8, clear: 2.6, longest: 4 * hour };

/**
 * Whether begins or ends move on from day to day by the clock on the wall and by UTC, as the sun does at a window and no
 * timer: each stands near the one before, though they spread. Source: the ratio of the mean square successive difference
 * to the variance, 2 by chance (J. von Neumann, Annals of Mathematical Statistics 12, 1941, from memory).
 */
function movesWithTheSeason({ view }: Picture, days: readonly Stretch[]): boolean {
  const n = days.length;
  if (n < season.days || median(days.map(({ start, end }) => end - start)) > season.longest) return false;
  const inOrder = [...days].sort((a, b) => a.start - b.start);
  const first = (inOrder[0] as Stretch).start;
  const moves = (hours: readonly number[]): boolean => {
    const spread = standardDeviation(hours);
    const steps = hours.slice(1).reduce((sum, h, k) => sum + (h - (hours[k] as number)) ** 2, 0) / (n - 1);
    const ratio = 2 - season.clear * Math.sqrt((4 * (n - 2)) / (n * n - 1));
    return spread > season.moves * view.interval && steps < ratio * spread ** 2;
  };
  return (['start', 'end'] as const).some((edge) =>
    [() => 0, (t: number) => view.clock.offset(t)].every((offset) =>
      moves(inOrder.map((of) => wrapped(of[edge] + offset(of[edge]) - first - offset(first)))),
    ),
  );
}

/** Time of day from half a day before midnight to half a day after [ms]. */
const wrapped = (time: number): number => time - day * Math.round(time / day);

/** Kinds of a dip that a blinded receiver may leave, and the longest such dip [ms]. Own choice. */
const blinding: readonly (Kind | undefined)[] = ['block', 'rough', 'smoke', 'light', 'slow'];
const longest = 3 * hour;

const known = new WeakMap<Picture, Sunlit | undefined>();

/** What the sun or a lamp does to the receiver of a beam, of each beam once; undefined where nothing speaks for it. */
export function sunlit(picture: Picture): Sunlit | undefined {
  if (!known.has(picture)) known.set(picture, findSunlit(picture));
  return known.get(picture);
}

/** Confidence from which it is light, and nothing else that these stretches may look like. */
const stated = 0.5;

/** Whether at least half of a stretch is stated to be light. */
export const isSunlit = (picture: Picture, { start, end }: Stretch): boolean => {
  const light = sunlit(picture);
  return (
    !!light &&
    light.confidence >= stated &&
    light.days.flat().some((p) => 2 * (Math.min(p.end, end) - Math.max(p.start, start)) >= end - start)
  );
};

function findSunlit(picture: Picture): Sunlit | undefined {
  const { excursions, kind } = picture;
  const light = excursions.filter((e) => kind.get(e) === 'light' && (e.deepSamples > 1 || e.depth > 0.04));
  const { noise } = shakingOrNoise(picture);
  const rough = noise.map((r) => roughPatch(picture, r));
  const dips = excursions.filter((e) => e.sign === 1 && blinding.includes(kind.get(e)) && e.end - e.start <= longest);
  const found = [
    lightAmong(
      picture,
      [...light, ...rough],
      { ...clear, share: doubtful.share },
      movesWithTheSeason(picture, rough) ? 1 : logistic(2 * (raisedIn(picture, noise) - 2)),
    ),
    lightAmong(picture, light, clear),
    lightAmong(picture, dips, doubtful),
  ].filter((of) => !!of);
  // Of those that are stated the one of most days, otherwise the likeliest.
  const weight = ({ confidence, days }: Sunlit): number => (confidence >= stated ? days.length : confidence);
  return found.sort((a, b) => weight(b) - weight(a))[0];
}
