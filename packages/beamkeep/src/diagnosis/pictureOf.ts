import type { Stretch } from '../columns/index.js';
import { rowAt } from '../columns/index.js';
import { median, robustSpread, rollingMedian } from '../statistics/index.js';
import { type Block, findBlocks, standsBetween, visitsTo } from './blocks.js';
import { cellAt } from './cells.js';
import type { Climb } from './climb.js';
import { findClimbs } from './climbs.js';
import { dailyShape, mayBeMovement } from './cycleKind.js';
import { bounds, clearEvents, depths, type Excursion, excursionAbout, findExcursions } from './excursions.js';
import { families } from './families.js';
import { heatOf, movedByHeat } from './heat.js';
import { heldRuns } from './held.js';
import { dayShift, fadesByDay, jumpsAsItStands, lastingSteps } from './lasting.js';
import { localDays } from './localDays.js';
import { courseNoise } from './noise.js';
import type { Picture } from './picture.js';
import { noiseBefore, roughFactor, roughness } from './roughness.js';
import { sortExcursions } from './sorting.js';
import { isStep } from './stepOrGrowth.js';
import type { Step } from './steps.js';
import {
  between,
  bridge,
  type CellParts,
  type Guides,
  leftOf,
  offCycle,
  type Parts,
  swing,
  takeApart,
  withRows,
} from './takeApart.js';
import { usualClimbs } from './usualClimbs.js';
import { levelOf, tenLog, type View } from './view.js';

/** Shares that a slow change must pass: 1.5 % of clean air, three spreads of an hour's median, 1.5 steps of the scale. */
const leastShare = 0.015;

/** Measures a beam. */
export function pictureOf(view: View, fires: readonly Stretch[]): Picture {
  const visits = visitsTo(view);
  const blocks = findBlocks(view);
  const shaded = new Uint8Array(view.trace.time.length);
  for (const { from, to } of blocks) shaded.fill(1, from, to);
  const held = heldRuns(view);
  for (const { from, to } of held) shaded.fill(1, from, to + 1);
  const first = takeApart(view, leastShare, { cycleAllowed: true, mask: shaded });
  const hourly = courseNoise(first.cells.level, view.quantum / Math.sqrt(12) / 2);
  const slowLimit = Math.max(leastShare, 3 * hourly, 1.5 * view.quantum);
  const shape = dailyShape(view, first, tenLog * slowLimit);
  const cycleAllowed = mayBeMovement(shape);
  const { cells } = first;
  const known = knownSteps(view, first, slowLimit, { cycleAllowed, mask: shaded });
  const second = takeApart(view, slowLimit, { cycleAllowed, mask: shaded, cells, known });
  const stands = standsBetween(view, second.steps);
  for (const { from, to } of stands) shaded.fill(1, from, to);
  const lasting = without(known, stands);
  const mask = maskOf(view, second, shaded);
  const parts = withRows(view, takeApart(view, slowLimit, { cycleAllowed, mask, known: lasting }));
  const depth = depths(view, parts.left);
  const rough = roughness(view, depth);
  const raised = roughFactor(rough, depth.length, view.sampleNoise);
  // A step takes off what may be smoke that stays: growth is looked for with the steps still in.
  const noiseAt = (row: number) => noiseBefore(rough, row) ?? view.sampleNoise * (raised[row] as number);
  const { climbs, lesser } = findClimbs(view, parts.offCycle, noiseAt);
  const leaves = (climb: Climb): boolean => leavesUsual(view, parts, climb);
  const leavingClimbs = new Set(climbs.filter(leaves));
  const growths = [...leavingClimbs, ...lesser.filter(leaves)];
  const excursions = allExcursions(view, parts, depth, raised, leavingClimbs);
  const threshold = 1 - view.beam.alarmThreshold / 100;
  const family = families(view, excursions, (e) => deepest(view, e) <= threshold);
  const days = localDays(view, parts.cells);
  const base = {
    view,
    parts,
    held,
    depth,
    days,
    heat: heatOf(view, parts),
    shape,
    excursions,
    family,
    climbs,
    leavingClimbs,
    growths,
    usualClimbs: usualClimbs(view, growths),
    rough,
    raised,
    fires,
    visits,
    slowLimit,
  };
  return { ...base, kind: sortExcursions(base) };
}

/** Steps that are known, without those at either side of an object. */
const without = (
  { steps, stands }: NonNullable<Guides['known']>,
  objects: readonly Block[],
): NonNullable<Guides['known']> => {
  const isReal = ({ row }: Step): boolean => !objects.some(({ from, to }) => row >= from && row <= to);
  return { steps: steps.filter(isReal), stands: (step) => isReal(step) && stands(step) };
};

/** Intervals of sampling within which the rows on either side of a step follow one another. Own choice. */
const mostIntervals = 4;

/** Steps that show from one day to the next, and the question whether others do. */
function knownSteps(
  view: View,
  parts: CellParts,
  slowLimit: number,
  { cycleAllowed, mask }: { readonly cycleAllowed: boolean; readonly mask: Uint8Array },
): NonNullable<Guides['known']> {
  const { time } = view.trace;
  const { cells, course, cycle } = parts;
  const isHeat = cycleAllowed ? movedByHeat(view, parts) : () => false;
  const asItStands = { rows: view.loss, cells: course };
  const off = () => ({
    rows: offCycle(view, cells, cycle, 0, view.loss.length),
    cells: course.map((v, c) => v - (cycle[c] as number)),
  });
  const series = cycleAllowed ? [off(), asItStands] : [asItStands];
  const least = tenLog * Math.exp((median(course) || 0) / tenLog) * slowLimit;
  const perDay = Math.round(86_400_000 / cells.width);
  const isReal = (step: Step): boolean =>
    !isHeat(step) && jumpsAsItStands(time, view.loss, mask, step, mostIntervals * view.interval);
  return {
    steps: lastingSteps({ time, hidden: mask, cells, course, series }, least).filter(isReal),
    stands: (step) =>
      cells.length < 2 * perDay ||
      !(
        !isReal(step) ||
        fadesByDay(
          dayShift(course, perDay, cellAt(cells, time[step.row] as number), Math.sign(step.loss)),
          Math.abs(step.loss),
        )
      ),
  };
}

/** Share of a growth under which an excursion shows but what the slow course has left of it. Own choice. */
const fragment = 0.65;

/** Longest excursion that is looked for against its own hours rather than against the cycle [ms]. */
const short = 2.5 * 3_600_000;

/**
 * The excursions of a beam: those of some hours against the slow course and the cycle; shorter ones against the hours
 * about them as well, where the cycle is large and its fit leaves a part behind; and what climbed as smoke may though
 * it passed no bound.
 */
function allExcursions(
  view: View,
  parts: Parts,
  depth: Float64Array,
  roughOnly: Float32Array,
  climbs: Iterable<Climb>,
): Excursion[] {
  const raised = raisedBounds(view, parts, roughOnly);
  const found = findExcursions(view, depth, raised);
  if (raised.some((f, i) => f > (roughOnly[i] as number))) {
    const fast = findExcursions(view, aboutNeighbours(view, parts, depth), roughOnly).filter(
      (e) => e.end - e.start < short,
    );
    const free = fast.filter((e) => !found.some((f) => f.sign === e.sign && f.start <= e.end && f.end >= e.start));
    found.push(...free);
  }
  for (const climb of climbs) {
    const known = found.findIndex((e) => e.sign === 1 && e.from <= climb.to && e.to >= climb.to - 1);
    const own = found[known];
    if (own?.open || isStep(view, parts, climb)) continue;
    const about = excursionAbout(view, climb);
    // The slow course follows what stays for half a day; smoke that has not cleared by the end of the log is not over.
    if (own === undefined) found.push(about);
    else if (about.open || own.depth < fragment * about.depth) found[known] = about;
  }
  return found.sort((a, b) => a.start - b.start || a.end - b.end);
}

/** Level above which light was added to that of clean air. Own choice. */
const mostClean = 1.02;

/** Whether a climb ends well above the loss of the day before it: the end of a spell of more light does not. */
function leavesUsual(
  { trace }: View,
  { cells, course, cycle, slow, offCycle }: Parts,
  { from, to, rise }: Climb,
): boolean {
  const perDay = Math.max(1, Math.round(86_400_000 / cells.width));
  const last = cellAt(cells, trace.time[from] as number);
  const first = Math.max(0, last - perDay);
  const day = course.slice(first, last).map((v, k) => v - (cycle[first + k] as number));
  let usual = median(day);
  if (Number.isNaN(usual)) {
    // Where smoke stays for most of a log, the clean air before it is hidden as if that were the event.
    const rows = [rowAt(trace.time, (trace.time[from] as number) - 86_400_000), from] as const;
    const isClean = median(trace.level.subarray(...rows)) <= mostClean;
    usual = isClean ? median(offCycle.subarray(...rows)) : (slow[last] as number);
  }
  return (offCycle[to] as number) - usual > 0.5 * rise;
}

/** Depth of each row below the middle of the five hours about it. */
function aboutNeighbours(view: View, parts: Parts, depth: Float64Array): Float64Array {
  const { cells } = parts;
  const middles = new Float64Array(cells.length);
  for (let c = 0; c < cells.length; c++) middles[c] = median(depth.subarray(cells.row[c], cells.row[c + 1]));
  const hours = rollingMedian(middles, Math.max(3, Math.round((5 * 3_600_000) / cells.width)) | 1);
  const course = bridge(hours, 0);
  const { time } = view.trace;
  const about = new Float64Array(depth.length);
  for (let i = 0; i < about.length; i++) {
    about[i] = (depth[i] as number) - between(cells, course, time[i] as number, 0, cells.length - 1);
  }
  return about;
}

/**
 * How much deeper an excursion must be on each row: where the samples are rougher for a while, and where the daily
 * cycle is large, whose fit leaves a part of it behind.
 */
function raisedBounds(view: View, parts: Parts, rough: Float32Array): Float32Array {
  const factor = Float32Array.from(rough);
  const { cells, cycle, course, slow } = parts;
  const { high } = bounds(view);
  const rest = course.map((v, c) => v - (slow[c] as number) - (cycle[c] as number));
  const usual = robustSpread(rest, 0);
  const perDay = Math.max(1, Math.round(86_400_000 / cells.width));
  for (let c = 0; c < cells.length; c++) {
    const from = Math.max(0, c - (perDay >> 1));
    const sway = swing(cycle, from, Math.min(cells.length, from + perDay));
    const left = Math.max(4 * usual, 0.35 * sway) / tenLog;
    const f = (left * levelOf(slow[c] as number)) / high;
    if (f <= 1) continue;
    for (let i = cells.row[c] as number; i < (cells.row[c + 1] as number); i++)
      factor[i] = Math.max(factor[i] as number, f);
  }
  return factor;
}

/** Lowest level within an excursion, share of clean air. */
export function deepest(view: View, e: Excursion): number {
  let low = Number.POSITIVE_INFINITY;
  for (let i = e.from; i <= e.to; i++) low = Math.min(low, view.trace.low[i] as number);
  return low;
}

/** Rows of clear events, so that the slow course and the cycle are fitted without them. */
function maskOf(view: View, parts: CellParts, shaded: Uint8Array): Uint8Array {
  const { time, until } = view.trace;
  const n = time.length;
  const mask = shaded.slice();
  for (const event of clearEvents(view, depths(view, leftOf(view, parts)))) {
    const margin = Math.min(view.interval * 5, 600_000);
    const from = rowAt(time, (time[event.from] as number) - margin);
    const to = Math.min(n, rowAt(time, (until[event.to] as number) + margin) + 1);
    mask.fill(1, from, to);
  }
  // What fills more than half of the log is no event: fitting must see it.
  return masked(mask) > 0.55 * n ? shaded : mask;
}

function masked(mask: Uint8Array): number {
  let rows = 0;
  for (let i = 0; i < mask.length; i++) rows += mask[i] as number;
  return rows;
}
