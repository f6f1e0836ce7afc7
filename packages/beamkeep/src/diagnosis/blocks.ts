import { day, hour, rowAt } from '../columns/index.js';
import type { Visit } from '../site/index.js';
import { median, quantile } from '../statistics/index.js';
import type { Step } from './steps.js';
import type { View } from './view.js';

/*
 * Objects in the path, found before anything else: two sharp edges of the same size, down and up, with a flat level
 * between them. They are found on the samples alone, so that one which stands for a day does not bend the slow course
 * that it would be measured against.
 */

/** An object in the path, as rows: the first that it shades, and the first after it. */
export interface Block {
  readonly from: number;
  readonly to: number;
}

interface Edge {
  /** First row on the far side. */
  readonly row: number;
  /** Change of the natural log of the level: negative for a loss. */
  readonly change: number;
}

/** Rows on each side whose middle makes the level beside an edge. */
const handful = 3;
/** Least share of the light that an object of hours takes; less could be mist or dust. */
const leastShare = 0.12;
/**
 * Longest an object stands: over a long weekend, or weeks where it takes nearly all; what else stands so long was knocked.
 * Common practice, no source.
 */
const longest = 3.5 * day;
const longestDeep = 30 * day;
const deep = 0.75;

/** Finds objects that stand for some samples at least. */
export function findBlocks(view: View): Block[] {
  const edges = sharpEdges(view);
  const { time, level } = view.trace;
  const blocks: Block[] = [];
  for (let k = 0; k < edges.length; k++) {
    const down = edges[k] as Edge;
    if (down.change >= 0) continue;
    const before = median(level.subarray(Math.max(0, down.row - 6), down.row - 1));
    for (let j = k + 1; j < Math.min(edges.length, k + 12); j++) {
      const up = edges[j] as Edge;
      const length = (time[up.row] as number) - (time[down.row] as number);
      if (length > longestDeep) break;
      if (up.change <= 0) continue;
      const after = median(level.subarray(up.row + 1, up.row + 7));
      const inner = level.subarray(down.row + 1, up.row - 1);
      if (inner.length < 2 || mostlyAbove(inner, before, length > longest ? deep : leastShare)) continue;
      const middle = median(inner);
      const lost = 1 - middle / before;
      if (lost < leastShare || (length > longest && lost < deep)) continue;
      const back = Math.abs(after / before - 1) < Math.max(0.25 * lost, 0.03);
      if (!back) continue;
      const flat = quantile(inner, 0.9) - quantile(inner, 0.1) < Math.max(0.15 * lost * before, 6 * view.sampleNoise);
      if (!flat || isUsual(view, down.row, up.row, middle, before)) continue;
      if (length > workLasts && wasWorkedOn(visitsTo(view), time[up.row] as number)) continue;
      blocks.push({ from: down.row, to: up.row });
      k = j;
      break;
    }
  }
  return blocks;
}

/** Share of a slight loss by which what comes back may differ from it. Own choice. */
const alike = 0.25;

/**
 * Objects in the edge of the path, which take too little to be found at once: a step down, and up again by as much within
 * a long weekend, and nobody aimed or cleaned the beam. A knock stays until somebody does.
 *
 * @param steps steps in order of time
 */
export function standsBetween(view: View, steps: readonly Step[]): Block[] {
  const { time } = view.trace;
  return steps.flatMap((down, k) => {
    const up = steps[k + 1];
    if (up === undefined || down.loss <= 0 || Math.abs(up.loss + down.loss) > alike * down.loss) return [];
    const left = time[up.row] as number;
    return left - (time[down.row] as number) > longest || wasWorkedOn(visitsTo(view), left)
      ? []
      : [{ from: down.row, to: up.row }];
  });
}

/** Visits that concern a beam. */
export const visitsTo = ({ site, beam }: View): Visit[] =>
  site.visits.filter((v) => v.beam === undefined || v.beam === beam.id);

/** Time about work on the beam within which what came back may be its doing [ms]. Own choice. */
const workLasts = 12 * hour;

/** What is done at a visit that may bring the reading back. */
const work: readonly Visit['work'][] = ['realigned', 'cleaned', 'renormalised'];

/** Whether someone aimed or cleaned the beam, or set its reading anew, about an instant. */
export const wasWorkedOn = (visits: readonly Visit[], at: number): boolean =>
  visits.some((v) => work.includes(v.work) && Math.abs(v.time - at) < workLasts);

/** Whether more than half of the levels lose less than a share of the level before: a look that spares the median. */
function mostlyAbove(levels: Float64Array, before: number, share: number): boolean {
  const enough = (levels.length >> 1) + 1;
  let above = 0;
  for (let i = 0; i < levels.length && above < enough; i++) if (1 - (levels[i] as number) / before < share) above++;
  return above >= enough;
}

/** Time on either side of a stretch whose middle is the usual level [ms], and samples of it that are looked at: own choice. */
const about = 3 * day;
const looks = 400;

/** Whether the level of a stretch is nearer to that of the days about it than the level on either side: light between. */
function isUsual({ trace }: View, from: number, to: number, middle: number, beside: number): boolean {
  const { time, level } = trace;
  const first = rowAt(time, (time[from] as number) - about);
  const last = Math.min(level.length, rowAt(time, (time[to] as number) + about));
  if ((time[last - 1] as number) - (time[first] as number) < day) return false;
  const every = Math.max(1, Math.floor((last - first) / looks));
  const seen: number[] = [];
  for (let i = first; i < last; i += every) if (i < from || i >= to) seen.push(level[i] as number);
  const usual = median(Float64Array.from(seen));
  return Math.abs(middle - usual) < Math.abs(beside - usual);
}

/** Places where the level changes by a tenth or more between one handful of samples and the next. */
function sharpEdges(view: View): Edge[] {
  const { level } = view.trace;
  const n = Math.max(level.length, 2 * handful);
  const dark = Math.max(0.01, 2 * view.sampleNoise);
  const least = Math.max(0.1, 8 * view.sampleNoise);
  const edges: Edge[] = [];
  const change = (i: number): number => {
    const a = median(level.subarray(i - handful, i));
    const b = median(level.subarray(i + 1, i + 1 + handful));
    return Math.log(Math.max(b, dark) / Math.max(a, dark));
  };
  for (let i = handful - 1; ; ) {
    // A quick look first: most rows have no edge near them.
    i = nextChange(level, i + 1, n - handful, least * 0.7);
    if (i === n - handful) return edges;
    const here = change(i);
    if (Math.abs(here) < least) continue;
    const last = edges.at(-1);
    if (last !== undefined && i - last.row <= handful && Math.sign(last.change) === Math.sign(here)) {
      if (Math.abs(here) > Math.abs(last.change)) edges[edges.length - 1] = { row: i, change: here };
    } else edges.push({ row: i, change: here });
  }
}

/** First row from `from` on about which the level changes by `least`; `to` where there is none. */
function nextChange(level: Float64Array, from: number, to: number, least: number): number {
  for (let i = from; i < to; i++) {
    if (!(Math.abs((level[i + 1] as number) - (level[i - 1] as number)) < least)) return i;
  }
  return to;
}
