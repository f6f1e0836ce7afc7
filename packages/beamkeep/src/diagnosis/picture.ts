import type { Stretch } from '../columns/index.js';
import { rowAt } from '../columns/index.js';
import type { Visit } from '../site/index.js';
import { type Climb, findClimbs } from './climbs.js';
import { type DailyShape, dailyShape, mayBeMovement } from './cycleKind.js';
import { bounds, depths, type Excursion, findExcursions } from './excursions.js';
import { type Family, families } from './families.js';
import { type LocalDay, localDays } from './localDays.js';
import { courseNoise } from './noise.js';
import { type Roughness, roughFactor, roughness } from './roughness.js';
import { type Kind, sortExcursions } from './sorting.js';
import type { Step } from './steps.js';
import { type Parts, takeApart } from './takeApart.js';
import { levelOf, type View } from './view.js';

/** All that is measured of a beam, once, for the causes to read. */
export interface Picture {
  readonly view: View;
  readonly parts: Parts;
  /** Depth of each row below slow course and cycle, share of clean air. */
  readonly depth: Float64Array;
  readonly days: readonly LocalDay[];
  readonly shape: DailyShape;
  readonly excursions: readonly Excursion[];
  readonly family: ReadonlyMap<Excursion, Family>;
  readonly kind: ReadonlyMap<Excursion, Kind>;
  readonly climbs: readonly Climb[];
  readonly rough: Roughness;
  /** Stretches in which the obscuration stood past the alarm threshold long enough to be a fire signal. */
  readonly fires: readonly Stretch[];
  /** Visits that concern the beam. */
  readonly visits: readonly Visit[];
  /** Least change of level that counts for slow causes, share of clean air. */
  readonly slowLimit: number;
}

/** Shares that a slow change must pass: 1.5 % of clean air, three spreads of an hour's median, 1.5 steps of the scale. */
const leastShare = 0.015;

/** Measures a beam. */
export function picture(view: View, fires: readonly Stretch[]): Picture {
  const visits = view.site.visits.filter((v) => v.beam === undefined || v.beam === view.beam.id);
  const first = takeApart(view, leastShare, { cycleAllowed: true, notSteps: new Set() });
  const hourly = courseNoise(first.cells.level, view.quantum / Math.sqrt(12) / 2);
  const slowLimit = Math.max(leastShare, 3 * hourly, 1.5 * view.quantum);
  const shape = dailyShape(view, first, 4.343 * slowLimit);
  const cycleAllowed = mayBeMovement(shape);
  const second = takeApart(view, slowLimit, { cycleAllowed, notSteps: new Set() });
  const pairs = objectPairs(view, second, visits);
  const notSteps = new Set(pairs.flatMap(([a, b]) => [a.row, b.row]));
  const mask = maskOf(view, second, pairs);
  const parts = takeApart(view, slowLimit, { cycleAllowed, notSteps, mask });
  const depth = depths(view, parts);
  const rough = roughness(view, depth);
  const excursions = findExcursions(view, depth, roughFactor(rough, depth.length));
  const climbs = findClimbs(view, parts.left);
  const threshold = 1 - view.beam.alarmThreshold / 100;
  const family = families(view, excursions, (e) => deepest(view, e) <= threshold);
  const days = localDays(view, parts.cells);
  const base = { view, parts, depth, days, shape, excursions, family, climbs, rough, fires, visits, slowLimit };
  return { ...base, kind: sortExcursions(base) };
}

/** Lowest level within an excursion, share of clean air. */
export function deepest(view: View, e: Excursion): number {
  let low = Number.POSITIVE_INFINITY;
  for (let i = e.from; i <= e.to; i++) low = Math.min(low, view.trace.low[i] as number);
  return low;
}

/** A loss and, within days, its return by the same amount: something stood in the path and was taken away. */
function objectPairs(view: View, parts: Parts, visits: readonly Visit[]): [Step, Step][] {
  const { time } = view.trace;
  const pairs: [Step, Step][] = [];
  const { steps } = parts;
  for (let k = 0; k + 1 < steps.length; k++) {
    const down = steps[k] as Step;
    const up = steps[k + 1] as Step;
    if (!(down.loss > 0 && up.loss < 0)) continue;
    const days = ((time[up.row] as number) - (time[down.row] as number)) / 86_400_000;
    const lost = 1 - levelOf(down.loss);
    const same = Math.abs(down.loss + up.loss) < Math.max(0.25 * down.loss, 0.15);
    const at = time[up.row] as number;
    const worked = visits.some(
      (v) => (v.work === 'realigned' || v.work === 'cleaned') && Math.abs(v.time - at) < 86_400_000,
    );
    if (same && !worked && ((lost > 0.1 && days < 4) || (lost > 0.4 && days < 30))) {
      pairs.push([down, up]);
      k++;
    }
  }
  return pairs;
}

/** Rows of clear events, so that the slow course and the cycle are fitted without them. */
function maskOf(view: View, parts: Parts, pairs: readonly [Step, Step][]): Uint8Array {
  const n = view.trace.time.length;
  const mask = new Uint8Array(n);
  for (const [down, up] of pairs) mask.fill(1, down.row, up.row);
  const depth = depths(view, parts);
  const { high } = bounds(view);
  let masked = 0;
  for (const e of findExcursions(view, depth)) {
    if (e.depth < 1.5 * high) continue;
    const margin = Math.min(view.interval * 5, 600_000);
    const from = rowAt(view.trace.time, e.start - margin);
    const to = Math.min(n, rowAt(view.trace.time, e.end + margin) + 1);
    mask.fill(1, from, to);
  }
  for (const m of mask) masked += m;
  // What fills a third of the log is no event: fitting must see it.
  if (masked > n / 3) {
    mask.fill(0);
    for (const [down, up] of pairs) mask.fill(1, down.row, up.row);
  }
  return mask;
}
