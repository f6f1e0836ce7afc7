import { hour } from '../columns/index.js';
import { slowestSmoke, smokeClear, smokeGrowth, smokeSamples } from '../numbers/index.js';
import { rollingMedian } from '../statistics/index.js';
import { isOfSwing } from './alternates.js';
import type { Climb } from './climb.js';
import { beside, type Crest, isCrest } from './crests.js';
import { smoothingRows } from './excursions.js';
import type { View } from './view.js';

/*
 * Climbs: stretches in which the loss grows at 0.02 dB a minute or more on average, the pace of the smoke rule. Found
 * by summing growth beyond that pace and starting afresh when the sum is used up, so that a dithering growth counts
 * as one. Work is linear in rows.
 */

/** Slowest growth that the smoke rule asks about [dB/min], and the share of clean air that it must reach. */
const pace = slowestSmoke.value;
const leastGrowth = smokeGrowth.value / 100;

/** Share of what a climb must reach from which a growth is a lesser one: it may be of one kind with a climb. Own choice. */
const lesserShare = 0.45;

/** The growths of a beam. */
export interface Climbs {
  /** Those to 3 % or more, clearly beyond the noise. */
  readonly climbs: readonly Climb[];
  /** Those that fall short of that by half or so, or are not held: no smoke by themselves, but like what is. */
  readonly lesser: readonly Climb[];
}

/**
 * Finds the climbs of a beam to 3 % or more, clearly beyond its noise, and what falls somewhat short of them.
 *
 * @param view the beam's record
 * @param left each row's loss with slow course and cycle taken off [dB]
 * @param noiseAt spread of single samples that a growth which begins on a row must stand clear of, share of clean air
 */
export function findClimbs(view: View, left: Float64Array, noiseAt: (row: number) => number): Climbs {
  const { trace } = view;
  const { time } = trace;
  // A median over few samples: the three minutes that serve excursions would hide a growth of seconds.
  const window = Math.min(5, smoothingRows(view.interval));
  const smooth = rollingMedian(left, window);
  const climbs: Climb[] = [];
  const lesser: Climb[] = [];
  const isSwing = ({ from, to, rise, cleared }: Climb): boolean => {
    const off = (i: number): number => ((left[i] as number) - (smooth[from] as number)) / rise;
    return isOfSwing(off, from, Math.min(cleared - 1, to + stands), left.length);
  };
  for (const { from, to } of growths(time, smooth)) {
    const climb = measure(view, smooth, left, from, to);
    const times = climb.lost / leastOf(view, noiseAt(from));
    if (times < lesserShare) continue;
    const held =
      climb.rows >= overRows ? heldSamples : samplesHeld(view, left, climb, (smooth[from] as number) + climb.rise / 2);
    if (times >= 1 && held >= heldSamples && !isSwing(climb)) climbs.push(climb);
    else if (held >= (times >= 1 ? briefSamples : heldSamples)) lesser.push(climb);
  }
  return { climbs: withoutCrests(view, climbs), lesser };
}

/** Rows, first and highest, of what grows at the pace or faster on average. */
function growths(time: Float64Array, smooth: Float64Array): { from: number; to: number }[] {
  const found: { from: number; to: number }[] = [];
  let from = 0;
  let sum = 0;
  let most = 0;
  let to = 0;
  for (let i = 1; i < smooth.length; i++) {
    const minutes = ((time[i] as number) - (time[i - 1] as number)) / 60_000;
    sum += (smooth[i] as number) - (smooth[i - 1] as number) - pace * minutes;
    if (sum > most) {
      most = sum;
      to = i;
    }
    if (sum <= 0 || sum < 0.3 * most) {
      if (most > 0) found.push({ from: slowBeginning(time, smooth, from, to, found.at(-1)?.to ?? 0), to });
      sum = 0;
      most = 0;
      from = i;
      to = i;
    }
  }
  if (most > 0) found.push({ from: slowBeginning(time, smooth, from, to, found.at(-1)?.to ?? 0), to });
  return found;
}

/** Share of the pace from which what comes before a growth belongs to it. Own choice. */
const slowPace = 0.5;

/**
 * Row at which a growth begins that is slow at first, as a fire is: on average it still grows at the pace.
 *
 * @param earliest row before which another growth ended
 */
function slowBeginning(time: Float64Array, smooth: Float64Array, from: number, to: number, earliest: number): number {
  const grown = (a: number, b: number): number => (smooth[b] as number) - (smooth[a] as number);
  const asked = (a: number, b: number): number => (pace * ((time[b] as number) - (time[a] as number))) / 60_000;
  let first = from;
  while (
    first > earliest &&
    grown(first - 1, first) >= slowPace * asked(first - 1, first) &&
    grown(first - 1, to) >= asked(first - 1, to)
  )
    first--;
  return first;
}

/** The climbs that are not one of many alike which follow one another. */
function withoutCrests({ trace: { time }, interval }: View, climbs: readonly Climb[]): Climb[] {
  const crests = climbs.map(({ from, cleared, rise }): Crest => {
    const start = time[from] as number;
    return { start, length: (time[Math.min(cleared, time.length - 1)] as number) - start, size: rise };
  });
  return climbs.filter((_, at) => !isCrest(beside(crests, at), crests[at] as Crest, interval));
}

/** Least growth of a climb over a noise, share of clean air. */
const leastOf = ({ quantum }: View, noise: number): number =>
  Math.max(leastGrowth, 3.5 * quantum, smokeClear.value * noise);

function measure(view: View, smooth: Float64Array, left: Float64Array, from: number, to: number): Climb {
  const { time, until, level } = view.trace;
  const rise = (smooth[to] as number) - (smooth[from] as number);
  const before = (level[to] as number) * 10 ** ((left[to] as number) / 10);
  const lost = before * (10 ** (-(smooth[from] as number) / 10) - 10 ** (-(smooth[to] as number) / 10));
  let low = from;
  while (low < to && (smooth[low + 1] as number) - (smooth[from] as number) < 0.1 * rise) low++;
  let high = low + 1;
  while (high < to && (smooth[high] as number) - (smooth[from] as number) < 0.9 * rise) high++;
  const took = (time[high] as number) - (until[low] as number);
  return { from, to, rise, lost, time: took, rows: high - low, cleared: clearedFrom(time, smooth, to, rise) };
}

/** Rows from which a growth is one by its course alone, after the smoke rule; a shorter one must be held. */
export const overRows = smokeSamples.value;
/** Most rows after a growth in which it is asked whether it comes back: what stands longer is no swing. Own choice. */
const stands = 64;
/** Samples past half of the growth from which it is held: what fewer hold may be a spike. Own choice. */
export const heldSamples = 4;
/** And from which one that is not held is a puff like others, rather than a wild sample. Own choice. */
const briefSamples = 2;

/** Samples past half of a growth, up to the time when it has cleared; some of noise may lie between. */
function samplesHeld({ trace: { count } }: View, left: Float64Array, { from, cleared }: Climb, half: number): number {
  let held = 0;
  for (let i = from; i < Math.min(left.length, cleared + 2) && held < heldSamples; i++) {
    if ((left[i] as number) > half) held += count[i] as number;
  }
  return held;
}

/** Longest that a growth is followed to its clearing [ms]: what stays longer has not cleared. Own choice. */
const followed = 24 * hour;

function clearedFrom(time: Float64Array, smooth: Float64Array, top: number, rise: number): number {
  const least = (smooth[top] as number) - (2 / 3) * rise;
  const latest = (time[top] as number) + followed;
  for (let i = top + 1; i < smooth.length && (time[i] as number) <= latest; i++) {
    if ((smooth[i] as number) < least) return i;
  }
  return smooth.length;
}
