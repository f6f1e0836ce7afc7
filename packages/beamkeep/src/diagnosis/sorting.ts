import { hour } from '../columns/index.js';
import type { Climb } from './climbs.js';
import type { Excursion } from './excursions.js';
import { hoursBetween, solarHour } from './families.js';
import type { Picture } from './picture.js';

/*
 * Each excursion is sorted by what it looks like. Smoke goes first and is only ruled out by the edges of an object, by
 * growth too slow for the smoke rule, or by a family of its like on other days; never by a better story.
 */

/** `block`: something in the path; `smoke`: cannot be told from smoke; `film`: mist; `dust`; `light`; `slow`: other. */
export type Kind = 'block' | 'smoke' | 'film' | 'dust' | 'light' | 'slow';

type Unsorted = Omit<Picture, 'kind'>;

/** Other days on which the like must have come before an excursion counts as one of a family. */
const familyDays = 2;

/** Sorts the excursions of a beam. */
export function sortExcursions(picture: Unsorted): Map<Excursion, Kind> {
  const kinds = new Map<Excursion, Kind>();
  const bright = picture.excursions.filter((e) => e.sign === -1);
  for (const e of picture.excursions) kinds.set(e, kindOf(picture, e, bright));
  return kinds;
}

function kindOf(picture: Unsorted, e: Excursion, bright: readonly Excursion[]): Kind {
  const { view, family } = picture;
  if (e.sign === -1) return 'light';
  if (isBlock(picture, e)) return 'block';
  const f = family.get(e);
  const recurs = f !== undefined && f.otherDays >= familyDays && f.others >= 3;
  const climb = climbIn(picture, e);
  const long = e.end - e.start;
  const at = solarHour(view, (e.start + e.end) / 2);
  const night = hoursBetween(at, 4) < 6.5;
  if (climb === undefined || recurs) {
    if (brightNearby(view.interval, e, bright, at, view)) return 'light';
    if (night && long > 0.75 * hour && e.raggedness < 2.5) return 'film';
    if (recurs && (e.raggedness >= 2 || climb !== undefined)) return night && long > 2 * hour ? 'film' : 'dust';
    if (climb === undefined) return 'slow';
    return 'dust';
  }
  return 'smoke';
}

/** Fast in, flat, fast out: an object. */
export function isBlock({ view }: Unsorted, e: Excursion): boolean {
  const fastIn = e.onsetRows <= 1 || e.onset <= 2000;
  const fastOut = e.recoveryRows <= 1 || e.recovery <= 2000 || e.open;
  if (!fastIn || !fastOut) return false;
  if (e.bottom < 0.08) return false;
  const noise = (3 * view.sampleNoise) / e.bottom;
  return e.deepSamples <= 3 || e.unevenness <= Math.max(0.12, noise);
}

/** The greatest climb that ends within an excursion. */
export function climbIn({ climbs, view }: Unsorted, e: Excursion): Climb | undefined {
  let best: Climb | undefined;
  for (const c of climbs) {
    if (c.to < e.from || c.from > e.to || c.to > e.to + 2) continue;
    if (c.rows < 2 || c.time <= Math.max(2000, 1.2 * view.interval)) continue;
    if (best === undefined || c.lost > best.lost) best = c;
  }
  return best;
}

/** Whether the level stood above its course at the same hour on other days: the sun, which also blinds. */
function brightNearby(
  interval: number,
  e: Excursion,
  bright: readonly Excursion[],
  at: number,
  view: Unsorted['view'],
): boolean {
  if (e.end - e.start > 4 * hour + interval) return false;
  let near = 0;
  for (const b of bright) if (hoursBetween(solarHour(view, (b.start + b.end) / 2), at) < 1.2) near++;
  return near >= 3;
}
