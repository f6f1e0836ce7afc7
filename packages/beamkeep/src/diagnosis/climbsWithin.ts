import type { Climb } from './climb.js';
import type { Excursion } from './excursions.js';
import type { Unsorted } from './picture.js';

/*
 * The climbs of an excursion: which of a beam's growths end within it, and whether they have their like on other days.
 */

/** Longest edge of an object [ms]: two seconds, and what the jitter of the samples about them may add. */
export const fastEdge = (interval: number): number => 2000 + Math.min(200, 0.2 * interval);

/** The climbs that end within an excursion. */
export const climbsIn = ({ climbs, view }: Unsorted, e: Excursion): Climb[] =>
  climbs.filter(
    (c) =>
      c.to >= e.from &&
      c.from <= e.to &&
      c.to <= e.to + 2 &&
      c.rows >= 2 &&
      c.time > Math.max(fastEdge(view.interval), 1.2 * view.interval),
  );

/** The greatest climb that ends within an excursion. */
export function climbIn(picture: Unsorted, e: Excursion): Climb | undefined {
  let best: Climb | undefined;
  for (const c of climbsIn(picture, e)) if (best === undefined || c.lost > best.lost) best = c;
  return best;
}

/** Times the greatest of its growths that an excursion may be deep: puffs run into one another and add up. Own choice. */
const addsUp = 2;

/** Whether an excursion is made of growths that all have their like on other days. */
export function growsAsUsual(picture: Unsorted, e: Excursion): boolean {
  const { leavingClimbs, growths, usualClimbs } = picture;
  const climbs = climbsIn(picture, e).filter((c) => leavingClimbs.has(c));
  const most = Math.max(0, ...climbs.map((c) => c.lost));
  if (most > 0) return e.depth <= addsUp * most && climbs.every((c) => usualClimbs.has(c));
  // Puffs too short to be climbs: the largest of them.
  const puffs = growths.filter((c) => c.to >= e.from && c.to <= e.to);
  const largest = Math.max(...puffs.map((c) => c.lost));
  return puffs.length > 0 && puffs.every((c) => usualClimbs.has(c) || addsUp * c.lost < largest);
}

/** Growths within an excursion that have no like on other days, however usual it is itself: smoke may come amid mist or dust. */
export const unusualClimbs = (picture: Unsorted, e: Excursion): Climb[] =>
  climbsIn(picture, e).filter((c) => picture.leavingClimbs.has(c) && !picture.usualClimbs.has(c));
