import { hour } from '../columns/index.js';

/*
 * The crests of a swing: what comes again and again at any pace, all of one size. Smoke comes once.
 */

/** What may be a crest. */
export interface Crest {
  /** Instant at which it begins [ms], and how long it lasts [ms]. */
  readonly start: number;
  readonly length: number;
  /** How large it is, in any unit that all have in common. */
  readonly size: number;
}

/**
 * So many alike within so many lengths on either side and half a day, of sizes and of lengths within these factors. Own
 * choice.
 */
const fewestAlike = 8;
const withinLengths = 12;
const longestAway = 12 * hour;
const sizeApart = 1.35;
const lengthApart = 3;
/** Neighbours that are looked at on either side, which keeps the work linear. Own choice. */
const looks = 32;

/** Those beside one of a list in order of time, itself among them. */
export const beside = <T>(all: readonly T[], at: number): T[] => all.slice(Math.max(0, at - looks), at + looks + 1);

/** Whether two sizes lie within a factor of each other, give or take so much. */
const isWithin = (a: number, b: number, factor: number, give: number): boolean =>
  a < factor * b + give && b < factor * a + give;

/**
 * Whether one is a crest among those beside it: one of many alike that follow one another.
 *
 * @param near those beside it, itself among them
 * @param interval between samples [ms]: no length is known better
 */
export function isCrest(near: readonly Crest[], one: Crest, interval: number): boolean {
  const reach = Math.min(longestAway, withinLengths * (one.length + interval));
  const alike = near.filter(
    (o) =>
      Math.abs(o.start - one.start) <= reach &&
      isWithin(o.size, one.size, sizeApart, 0) &&
      isWithin(o.length, one.length, lengthApart, interval),
  );
  // It is like itself, too.
  return alike.length > fewestAlike;
}
