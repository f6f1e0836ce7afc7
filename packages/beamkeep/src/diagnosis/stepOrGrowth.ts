import { median, robustSpread } from '../statistics/index.js';
import type { Climb } from './climb.js';
import type { Parts } from './takeApart.js';
import { tenLog, type View } from './view.js';

/*
 * A step leaves a climb behind, and so does smoke that stays. `grew` in steps.ts asks the samples about a step, and cannot
 * tell where they are rough after it; here the climb itself is asked, from the calm samples before it on.
 */

/** Whether a climb is a change at once: a step has shown already that it did not grow. */
export const isStep = (view: View, parts: Parts, climb: Climb): boolean =>
  parts.steps.some((s) => s.row > climb.from && s.row <= climb.to + 1 && s.loss > 0.6 * climb.rise) &&
  !grewAtFirst(view, parts, climb);

/** Share of a growth by which a sample has begun to grow, and share up to which samples show that it did. Own choice. */
const begun = 0.04;
const halfway = 0.5;
/** Samples before a growth whose middle it begins from, and those between. Own choice. */
const samplesBefore = 5;
const slowAtFirst = 2;
/** Strides in a row that make a growth, and most that one of them may be of all. Own choice. */
const strides = 3;
const mostAtOnce = 0.55;

/**
 * Whether a change took two samples or more on the way to its half, or some strides none of which was most of it: a mean
 * over the instant of a change leaves but one sample between, and what dithers only after it tells nothing.
 */
function grewAtFirst(view: View, { offCycle }: Parts, { from, to, rise }: Climb): boolean {
  // What grew too slowly for the climb at first comes before it.
  const first = from - slowAtFirst;
  const before = offCycle.subarray(Math.max(0, first - samplesBefore), Math.max(0, first));
  if (before.length < samplesBefore) return false;
  const base = median(before);
  const clear = 4 * robustSpread(before, (tenLog * view.quantum) / (view.trace.level[from] as number));
  const least = Math.max(begun * rise, clear);
  let i = first;
  while (i < to && (offCycle[i] as number) - base <= least) i++;
  let between = 0;
  let count = 0;
  let largest = 0;
  let last = offCycle[i - 1] as number;
  for (; i <= to && (offCycle[i] as number) - last > clear; i++) {
    const stride = (offCycle[i] as number) - last;
    last = offCycle[i] as number;
    if (last - base < halfway * rise) between++;
    largest = Math.max(largest, stride);
    count++;
  }
  const all = last - base;
  return between >= 2 || (count >= strides && all > halfway * rise && largest <= mostAtOnce * all);
}
