import { hour, type Stretch } from '../../columns/index.js';
import { smokeClear, smokeGrowth } from '../../numbers/index.js';
import { median } from '../../statistics/index.js';
import type { Picture } from '../picture.js';
import { tenLog } from '../view.js';
import { type RoughStretch, roughStretches } from './roughStretches.js';

/*
 * Smoke that hangs, and came too fast for a slow logger to see it grow, or under the pace of the smoke rule: light is lost
 * and stays lost, and from that moment on the samples spread, for smoke is never even. A knock leaves them as they were;
 * electrical noise takes no light.
 */

/** Light lost for long, with samples that spread from then on. */
export interface Dithering extends Stretch {
  /** Loss, share of clean air. */
  readonly lost: number;
}

/** Shortest that hangs [ms]: the slow course follows it, so that it is no excursion. Own choice. */
const hangs = 12 * hour;
/** Rows before the samples were found to spread, in which the light may have been lost. Own choice. */
const reach = 30;
/** Rows that tell a level, and rows afterwards in which it may be lost yet. Own choice. */
const rows = 12;

/** What hangs and dithers in the record of a beam. */
export const ditherings = (picture: Picture): Dithering[] =>
  roughStretches(picture).flatMap((r) => (r.end - r.start < hangs ? [] : (lostWith(picture, r) ?? [])));

/** The loss that came with a rough stretch; undefined where none did, or where it did not stay. */
function lostWith({ view, parts, rough }: Picture, { from, to, end }: RoughStretch): Dithering | undefined {
  const { offCycle } = parts;
  const first = from - reach;
  if (first < rows) return undefined;
  const before = median(offCycle.subarray(first - rows, first));
  const stays = median(offCycle.subarray(from, to + 1));
  const begun = median(offCycle.subarray(from, Math.min(to + 1, from + 2 * rows)));
  const left = Math.exp(-before / tenLog);
  const lost = left * (1 - Math.exp((before - begun) / tenLog));
  if (lost < Math.max(smokeGrowth.value / 100, smokeClear.value * rough.usual)) return undefined;
  const half = (before + begun) / 2;
  if (stays < half) return undefined;
  for (let i = first; i <= from + rows; i++) {
    if (median(offCycle.subarray(i, i + 5)) > half && (offCycle[i] as number) > half)
      return { start: view.trace.time[i] as number, end, lost };
  }
  return undefined;
}
