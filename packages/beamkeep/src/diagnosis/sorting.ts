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
  const alone = new Map(picture.excursions.map((e) => [e, kindOf(picture, e)] as const));
  return new Map(picture.excursions.map((e) => [e, agreed(picture, alone, e)] as const));
}

/** Kinds that come again, in which one excursion may be mistaken for another. */
const recurring: readonly Kind[] = ['film', 'dust', 'light', 'slow'];

/** What most of the family are taken for: a single dip of a dusty morning may look smooth, its like do not. */
function agreed({ family }: Unsorted, alone: ReadonlyMap<Excursion, Kind>, e: Excursion): Kind {
  const own = alone.get(e) ?? 'slow';
  const like = family.get(e)?.members ?? [];
  if (!recurring.includes(own) || like.length < 4 || e.sign === -1) return own;
  const votes = new Map<Kind, number>([[own, 1.5]]);
  for (const other of like) {
    const kind = alone.get(other) ?? 'slow';
    if (recurring.includes(kind)) votes.set(kind, (votes.get(kind) ?? 0) + (kind === 'slow' ? 0.3 : 1));
  }
  let best = own;
  for (const [kind, n] of votes) if (n > (votes.get(best) ?? 0)) best = kind;
  return best;
}

function kindOf(picture: Unsorted, e: Excursion): Kind {
  const { view, family } = picture;
  const long = e.end - e.start;
  const at = solarHour(view, (e.start + e.end) / 2);
  const f = family.get(e);
  const sharp = long <= 3 * hour && Math.min(e.onset, e.recovery) <= 0.5 * hour && e.onset <= hour;
  if (e.sign === -1) return sharp ? 'light' : 'slow';
  if (isBlock(picture, e)) return 'block';
  const recurs = f !== undefined && f.otherDays >= familyDays && f.others >= 3;
  const climb = climbIn(picture, e);
  if (climb !== undefined && !recurs) return 'smoke';
  // The sun keeps to its minute from day to day, work only to its hours.
  const byDay = at > 4 && at < 20.5;
  if (byDay && sharp && f !== undefined && f.otherDays >= 3 && f.hoursApart < 0.6 && !f.oneWeekday) return 'light';
  const night = hoursBetween(at, 4) < 6;
  if (night && long > 1.2 * hour && e.raggedness < 2.3 && e.onset > 0.3 * hour) return 'film';
  if (recurs && climb !== undefined) return night && long > 2 * hour && e.raggedness < 2.3 ? 'film' : 'dust';
  if (recurs && e.raggedness >= 1.5 && e.onset < hour / 2 && long < 4 * hour) return 'dust';
  return 'slow';
}

/** Fast in, flat, fast out: an object. */
export function isBlock({ view }: Unsorted, e: Excursion): boolean {
  if (e.bottom < 0.08) return false;
  const fast = fastEdge(view.interval);
  const noise = (3 * view.sampleNoise) / e.bottom;
  // A sample that is a mean over its interval stands halfway on an edge: two rows, if the bottom is flat.
  const rows = view.interval > 2000 && e.unevenness <= Math.max(0.06, noise) ? 2 : 1;
  const fastIn = e.onsetRows <= rows || e.onset <= fast;
  const fastOut = e.recoveryRows <= rows || e.recovery <= fast || e.open;
  if (!fastIn || !fastOut) return false;
  return e.deepSamples <= 3 || e.unevenness <= Math.max(0.15, noise);
}

/** Longest edge of an object [ms]: two seconds, and what the jitter of the samples about them may add. */
const fastEdge = (interval: number): number => 2000 + Math.min(200, 0.2 * interval);

/** The greatest climb that ends within an excursion. */
export function climbIn({ climbs, view }: Unsorted, e: Excursion): Climb | undefined {
  let best: Climb | undefined;
  for (const c of climbs) {
    if (c.to < e.from || c.from > e.to || c.to > e.to + 2) continue;
    if (c.rows < 2 || c.time <= Math.max(fastEdge(view.interval), 1.2 * view.interval)) continue;
    if (best === undefined || c.lost > best.lost) best = c;
  }
  return best;
}
