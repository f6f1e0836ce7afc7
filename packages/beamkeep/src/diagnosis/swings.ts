import { day } from '../columns/index.js';
import { median, rollingMedian } from '../statistics/index.js';
import type { LocalDay } from './localDays.js';
import type { Picture } from './picture.js';
import { levelOf, tenLog } from './view.js';

/** How far the level sways on one local day. */
export interface Swing extends LocalDay {
  /** Trough to crest of the daily cycle, share of clean air. */
  readonly swing: number;
  /** Share of the day's course that the cycle explains, noise left out, 0 to 1. */
  readonly explained: number;
}

/** Share of a day's course that the cycle must explain for the rest of it to be movement, too: own choice. */
const mostly = 0.45;
/** Range of a day of noise whose hours are smoothed by a median of three, in spreads of an hour: from the normal law, about. */
const rangeOfNoise = 2.6;
/** Mean size of noise, in its standard deviations: sqrt(2/pi), of the normal law. */
const meanOfNoise = Math.sqrt(2 / Math.PI);

/**
 * The daily swings of a beam whose cycle could be fitted, whole days and the parts of days at both ends. The fit holds
 * back on days unlike the others; where it explains most of a day, the day's own course tells how far it swung.
 */
export function swings({ parts, days }: Pick<Picture, 'parts' | 'days'>): Swing[] {
  const { course, slow, cycle, cycleFitted, cellNoise } = parts;
  if (!cycleFitted) return [];
  const rest = course.map((v, c) => v - (slow[c] as number) - (cycle[c] as number));
  const smooth = rollingMedian(course, 3);
  const middles = days.map((d) => median(slow.subarray(d.fromCell, d.toCell)));
  return days.flatMap((d, k) => {
    if (d.end - d.start < 0.25 * day) return [];
    const base = middles[k] as number;
    // The slow course follows the sway in part: what the days about lose from one to the next is taken off instead.
    const [before, after] = [days[k - 1], days[k + 1]];
    const [first, last] = [before?.from ?? d.from, after?.to ?? d.to];
    const steady = parts.steps.every((s) => s.row < first || s.row > last + 1);
    const beside = [middles[k - 1], middles[k + 1]].map((m) => m ?? base) as [number, number];
    const trend = (beside[1] - beside[0]) / Math.max(1, (after ?? d).toCell - (before ?? d).toCell);
    const centre = (d.fromCell + d.toCell - 1) / 2;
    const about = rest.subarray(d.fromCell, d.toCell).map((v, i) => v + (cycle[d.fromCell + i] as number));
    const middle = median(about);
    let left = 0;
    let whole = 0;
    const fitted = new Range();
    const own = new Range();
    for (let c = d.fromCell; c < d.toCell; c++) {
      const part = cycle[c] as number;
      fitted.take(levelOf(base + part));
      const x = rest[c] as number;
      if (Number.isNaN(x)) continue;
      own.take(levelOf((smooth[c] as number) - trend * (c - centre)));
      left += Math.abs(x);
      whole += Math.abs((about[c - d.fromCell] as number) - middle);
    }
    // Noise of single hours is neither course nor what the cycle leaves: it is taken out of both, as it adds, in squares.
    const noise = meanOfNoise * cellNoise * own.taken;
    const [swayed, unlike] = [less(whole, noise), less(left, noise)];
    const explained = swayed > 0 ? Math.max(0, 1 - unlike / swayed) : 0;
    const byNoise = (rangeOfNoise * cellNoise * levelOf(base)) / tenLog;
    const ofItself = steady && explained >= mostly ? less(own.size, byNoise) : 0;
    return [{ ...d, swing: Math.max(fitted.size, ofItself), explained }];
  });
}

/** What is left of a size when independent noise is taken out of it. */
const less = (size: number, noise: number): number => Math.sqrt(Math.max(0, size ** 2 - noise ** 2));

/** Least and greatest of what was taken, and how many. */
class Range {
  taken = 0;
  private low = Number.POSITIVE_INFINITY;
  private high = Number.NEGATIVE_INFINITY;
  take(value: number): void {
    this.taken++;
    this.low = Math.min(this.low, value);
    this.high = Math.max(this.high, value);
  }
  get size(): number {
    return Math.max(0, this.high - this.low);
  }
}
