import { median, quantile } from '../statistics/index.js';
import { daysOf } from './causes/recurring.js';
import { middle } from './cells.js';
import type { Finding } from './finding.js';
import type { Picture } from './picture.js';
import { lossBy } from './sorting.js';

/** What a forecast of the margin needs of a diagnosis. */
export interface Trend {
  /** Middles of the cells [ms]. */
  readonly time: Float64Array;
  /** Slow loss of each, events masked and daily cycle taken off [dB]; NaN is missing. */
  readonly loss: Float64Array;
  /** Jumps of the level, in order of time. */
  readonly breaks: readonly { readonly time: number; readonly restoration: boolean }[];
  /** How far the low of a day of large sway lies below that day's middle [dB]. */
  readonly dailyLow: number;
  /** Whether the loss is stated to be an aim that creeps. */
  readonly creeping: boolean;
}

/** The sway of one day in ten is larger: the margin is first used up on a day of large sway, not on an ordinary one. */
const largeSway = 0.9;
/** Where days share no cycle: cells so deep that few lie deeper, and how many spreads of noise those lie off. */
const deepShare = 0.97;
const deepByNoise = 1.88;

/** The slow loss to be carried on, where a finding states that it still goes on; else nothing. */
export function trend(picture: Picture, findings: readonly Finding[]): Trend | undefined {
  const { parts, days, heat, view } = picture;
  const going = findings.filter(
    (f) => f.ongoing && f.confidence >= 0.5 && (f.cause === 'contamination' || f.cause === 'misalignment-drift'),
  );
  if (going.length === 0) return undefined;
  const { cells, course, cycle, steps } = parts;
  return {
    time: Float64Array.from({ length: cells.length }, (_, c) => middle(cells, c)),
    loss: course.map((v, c) => v - (cycle[c] as number) - (heat?.season[c] ?? 0)),
    breaks: steps.map((s) => ({ time: view.trace.time[s.row] as number, restoration: s.loss < 0 })),
    dailyLow: Math.max(loadLow(picture), dailyLow(parts, days) || 0),
    creeping: going.some((f) => f.cause === 'misalignment-drift'),
  };
}

/** How far loads on the structure take the level down on a day of large ones [dB]; 0 where they come on fewer than one day in ten. */
function loadLow(picture: Picture): number {
  const loads = daysOf(picture, 'load');
  const most = picture.days.map((d) =>
    Math.max(0, ...(loads.get(d.number) ?? []).map((e) => e.sign * lossBy(picture, e))),
  );
  return quantile(Float64Array.from(most), largeSway) || 0;
}

/** How far the low of a day of large sway lies below that day's middle [dB]. */
function dailyLow({ course, cycle, cycleFitted, slow, cellNoise }: Picture['parts'], days: Picture['days']): number {
  if (cycleFitted) {
    const lows = days
      .filter((d) => d.toCell > d.fromCell)
      .map((d) => {
        const day = cycle.slice(d.fromCell, d.toCell);
        return Math.max(...day) - median(day);
      });
    return quantile(lows, largeSway);
  }
  const deep = quantile(
    course.map((v, c) => v - (slow[c] as number)),
    deepShare,
  );
  return deep > 0 ? Math.sqrt(Math.max(0, deep ** 2 - (deepByNoise * cellNoise) ** 2)) : 0;
}
