import { hour } from '../columns/index.js';
import type { Climb } from './climb.js';
import { climbsIn, fastEdge } from './climbsWithin.js';
import type { Excursion } from './excursions.js';
import { type Family, familyDays } from './families.js';
import type { Unsorted } from './picture.js';
import { swayAt } from './swayAt.js';

/*
 * What comes at once and goes at once, flat between: an object in the path, or a knock that is put right. Smoke does
 * neither.
 */

/** Least light that an object takes, of itself and where few samples show it, and as a share of a sway. Own choice. */
const leastOfObject = 0.08;
const leastOfFewSamples = 0.15;
const shareOfSway = 0.35;

/** Fast in, flat, fast out: an object. */
export const isBlock = (picture: Unsorted, e: Excursion): boolean =>
  e.bottom >= (e.deepSamples <= 2 ? leastOfFewSamples : leastOfObject) &&
  e.bottom >= shareOfSway * swayAt(picture, e) &&
  isSharp(picture, e) &&
  (e.deepSamples <= 3 || isFlat(picture, e));

/** Whether an excursion comes at once and goes at once. */
function isSharp(picture: Unsorted, e: Excursion): boolean {
  const { view } = picture;
  const fast = fastEdge(view.interval);
  // A sample that is a mean over its interval stands halfway on an edge: two rows, if the bottom is flat.
  const averaged = view.interval > 2000 && e.unevenness <= unevenBy(picture, e, 0.06) && !growsOver(picture, e, 3);
  const rows = averaged ? 2 : 1;
  // What has not left yet shows but one edge: there a sample between is growth that may be smoke.
  const fastIn = e.onsetRows <= (e.open ? 1 : rows) || e.onset <= fast;
  const fastOut = e.recoveryRows <= rows || e.recovery <= fast || e.open;
  return fastIn && fastOut;
}

const isFlat = (picture: Unsorted, e: Excursion): boolean => e.unevenness <= unevenBy(picture, e, 0.15);

/** Unevenness of a flat bottom: a share of its depth, or what noise leaves. */
const unevenBy = ({ view }: Unsorted, e: Excursion, share: number): number =>
  Math.max(share, (3 * view.sampleNoise) / e.bottom);

/**
 * Most light that a slight stand takes, the shortest that it stands [ms], how many times as long as its edges, and spreads
 * of single samples that it must pass. Smoke neither comes nor goes at once. Own choice.
 */
const mostOfStand = 0.2;
const shortestStand = hour;
const timesEdges = 20;
const clearSpreads = 8;

/**
 * A slight loss at once that stands for hours and is gone at once, on this day alone: knocked and put right, where someone
 * was there to aim it, or else an object in the edge of the path.
 */
export const isSlightStand = (picture: Unsorted, e: Excursion, f: Family | undefined): boolean =>
  !e.open &&
  e.bottom < mostOfStand &&
  e.bottom > Math.max(picture.slowLimit, clearSpreads * picture.view.sampleNoise) &&
  standsLong(picture, e) &&
  (f === undefined || f.otherDays < familyDays) &&
  isSharp(picture, e) &&
  isFlat(picture, e);

/** Whether an excursion stands for hours, and many times as long as its edges. */
export const standsLong = ({ view }: Unsorted, e: Excursion): boolean =>
  e.end - e.start >= Math.max(shortestStand, timesEdges * (e.onsetRows + e.recoveryRows) * view.interval);

/** Whether most of an excursion's depth came over so many rows or more: more than one sample stands between. */
const growsOver = (picture: Unsorted, e: Excursion, rows: number): boolean =>
  climbsIn(picture, e).some((c) => c.rows >= rows && c.lost > 0.5 * e.bottom);

/**
 * Rows that a growth may take to be the edge of an object which one sample averages, rows that its smoothing may set it
 * off, share of the depth that it must make, samples that must stand on the bottom and its greatest unevenness: smoke
 * that hangs dithers more. Own choice.
 */
const edgeRows = 2;
const edgeOff = 3;
const edgeShare = 0.8;
const bottomSamples = 6;
const bottomUnevenness = 0.03;

/** Whether a growth is but the edge of an object that came at once, stood flat and went at once: a sample lay on the edge. */
export const isOwnEdge = (e: Excursion, { from, rows, lost }: Climb): boolean =>
  !e.open &&
  Math.abs(e.from - from) <= edgeOff &&
  Math.max(rows, e.onsetRows, e.recoveryRows) <= edgeRows &&
  lost >= edgeShare * e.bottom &&
  e.deepSamples >= bottomSamples &&
  e.unevenness <= bottomUnevenness;
