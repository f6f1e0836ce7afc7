import { day, minute } from '../columns/index.js';
import { type Beam, unitSigns } from '../site/index.js';
import { middle } from './middle.js';

/** Stretches whose medians are looked at. */
const stretch = 10 * minute;
/** Days among which the first good one is sought. */
export const daysLookedAt = 7;
/** A day is good when it comes near what the best of the days reach. */
const nearBest = 0.7;

/** What a log says a beam reads in clean air. */
export interface CleanAirFound {
  /** [as the readings given] */
  readonly reading: number;
  /** First instant of the good stretch [ms]; undefined where no light came at all. */
  readonly from: number | undefined;
}

/** Where no light came, clean air is taken to read so many times more than nothing: every level is then next to 0. */
const farAboveDark = 1000;

/**
 * Reading in clean air, where the site does not say it: the upper quartile of the ten-minute medians of the first
 * good day. A day is one of 24 hours from the first sample on; good is one whose upper quartile comes to 70 % of what
 * the best tenth of the first seven days reaches, so that a log that begins with the beam covered, blocked or off is
 * not measured by that. The upper quartile stands above the dips of a night's mist or a day's sway, and below the few
 * minutes in which light is added. Where no day is good so, it is what the best tenth reaches.
 *
 * A beam whose readings never rise above what does not come by it tells nothing of clean air: it is taken for dark.
 *
 * @param time rising instants [ms]
 * @param readings proportional to received power, without NaN
 * @param covered what does not come by the beam, in the same scale
 * @returns undefined of no samples
 */
export function cleanAirFound(time: Float64Array, readings: Float64Array, covered: number): CleanAirFound | undefined {
  const start = time[0];
  if (start === undefined) return undefined;
  const count = time.length;
  const days: number[][] = [];
  let work = new Float64Array(1024);
  for (let from = 0; from < count; ) {
    const piece = Math.floor(((time[from] as number) - start) / stretch);
    const end = start + (piece + 1) * stretch;
    let to = from;
    while (to < count && (time[to] as number) < end) to++;
    const which = Math.floor((piece * stretch) / day);
    if (which >= daysLookedAt) break;
    if (to - from > work.length) work = new Float64Array(2 * (to - from));
    work.set(readings.subarray(from, to));
    const medians = days[which] ?? [];
    medians.push(middle(work, to - from));
    days[which] = medians;
    from = to;
  }
  const best = atShare(days.flat(), 0.9);
  if (!(best > covered)) return { reading: covered + farAboveDark * Math.max(1, covered), from: undefined };
  for (const [which, medians] of days.entries()) {
    if (medians === undefined) continue;
    const reading = atShare(medians, 0.75);
    if (reading >= nearBest * best) return { reading, from: start + which * day };
  }
  return { reading: best, from: start };
}

/** How a clean-air reading that the log told is said under `assumed`. */
export function cleanAirTold({ reading, from }: CleanAirFound, { signalUnit }: Pick<Beam, 'signalUnit'>): string {
  if (from === undefined) return 'cleanAir unknown: the readings never rise above the covered reading, no light came';
  const date = new Date(from).toISOString().slice(0, 10);
  return `cleanAir ${Number(reading.toPrecision(6))} ${unitSigns[signalUnit]}, from the log's first good stretch (${date})`;
}

/** The value below which a share of the numbers lies. */
function atShare(numbers: readonly number[], share: number): number {
  const sorted = Float64Array.from(numbers).sort();
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}
