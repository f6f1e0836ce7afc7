import { hour } from '../columns/index.js';
import { slowestSmoke, smokeGrowth } from '../numbers/index.js';
import { median, robustSpread } from '../statistics/index.js';
import { wasWorkedOn } from './blocks.js';
import { climbIn, growsAsUsual } from './climbsWithin.js';
import { isBlock, isSlightStand } from './edges.js';
import { type Excursion, slowerOut } from './excursions.js';
import { type Family, familyDays, hoursBetween, solarHour } from './families.js';
import type { Kind, Unsorted } from './picture.js';
import { swayAt } from './swayAt.js';
import { tenLog, type View } from './view.js';
import { isNoise, isSwing, isTail } from './wildSamples.js';

/*
 * Each excursion is sorted by what it looks like. Smoke goes first and is only ruled out by noise that reaches as far, by
 * the edges of an object, by growth too slow for the smoke rule (far too slow, where it came but once), or by a family of
 * its like on other days; never by a better story.
 */

/** Sorts the excursions of a beam. */
export function sortExcursions(picture: Unsorted): Map<Excursion, Kind> {
  const alone = new Map(picture.excursions.map((e) => [e, kindOf(picture, e)] as const));
  const kinds = new Map(picture.excursions.map((e) => [e, agreed(picture, alone, e)] as const));
  return kinds;
}

/** The coldest solar hour [h]. */
const coldest = 5;

/** Kinds that come again, in which one excursion may be mistaken for another. */
const recurring: readonly Kind[] = ['film', 'dust', 'light', 'load', 'slow'];

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
  if (isNoise(picture, e)) return 'rough';
  if (e.sign === -1 && isLoad(picture, e, f) && isAnySize(e, f)) return 'load';
  if (e.sign === -1) return (sharp || isSwitched(e, f)) && !isOfCycle(picture, e) ? 'light' : 'slow';
  if (isSwitched(e, f)) return 'light';
  const isFilm = filmScore(e, at) > 0;
  const recurs =
    (hasFamily(f, isFilm ? 2 : 3) || (growsAsUsual(picture, e) && !isLoneHump(e, f))) && !isSteadiest(e, f);
  const often = f !== undefined && f.otherDays >= 4;
  // A dip too short to show its bottom that comes on many days is a puff of dust as well as a passing object.
  if (isSlightStand(picture, e, f)) return wasWorkedOn(picture.visits, e.end) ? 'knock' : 'block';
  if (isBlock(picture, e) && !(often && e.deepSamples <= 3 && e.depth < 0.7)) {
    if (isTail(picture, e)) return 'rough';
    // The same flat shallow step at working hours on many days: the structure under a load, rather than an object.
    if (f !== undefined && f.otherDays >= loadDays && e.depth < shallow && e.deepSamples > 3) return 'load';
    // An object is taken away; what fell in part and still stands there hours later, to the end of the log, was knocked.
    return e.open && e.bottom < partial && long >= stands ? 'knock' : 'block';
  }
  const climb = climbIn(picture, e);
  const grew = climb !== undefined || growsAsSmoke(picture, e, doubtfulPace) || (!isFilm && growsAlone(picture, e, f));
  if (!recurs && grew) return isSwing(picture, e) ? 'rough' : 'smoke';
  // Whatever the cycle made of it, what may have grown to a peak as smoke does stays smoke.
  if (isOfCycle(picture, e)) return !recurs && mayPeakAsSmoke(picture, e) ? 'smoke' : 'slow';
  if (isLoad(picture, e, f)) return 'load';
  // The sun keeps to its minute from day to day, work only to its hours.
  const byDay = at > 4 && at < 20.5;
  const daily = f !== undefined && f.otherDays >= 3 && f.hoursApart < 0.6 && !f.oneWeekday;
  if (byDay && sharp && daily && comesAsItGoes(view, e, f)) return 'light';
  if (isFilm) return 'film';
  if (recurs) return standsOut(picture, e) ? 'dust' : 'slow';
  return mayPeakAsSmoke(picture, e) ? 'smoke' : 'slow';
}

/** What nothing else explains is given more of a doubt. */
const mayPeakAsSmoke = (picture: Unsorted, e: Excursion): boolean =>
  standsOut(picture, e) && growsAsSmoke(picture, e, doubtfulPaceToPeak);

/** Whether several of its like came on other days: of mist, which comes once a night, fewer. Own choice. */
const hasFamily = (f: Family | undefined, others: number): boolean =>
  f !== undefined && f.otherDays >= familyDays && f.others >= others;

/** Raggedness under which a dip is a single hump, and deep samples that show it. Own choice. */
const humpRaggedness = 1.3;
const humpSamples = 6;

/** Whether a dip is one hump, and none like it came on another day, however usual its growth is. */
const isLoneHump = (e: Excursion, f: Family | undefined, raggedness = humpRaggedness): boolean =>
  f?.others === 0 && e.raggedness < raggedness && e.deepSamples >= humpSamples;

/** Raggedness under which a lone hump is taken for smoke in doubt, which comes once and dithers. Own choice, as the four below. */
const ragged = 2;
/** Longest that it stands [ms]. */
const longestLone = 8 * hour;
/** Times the sway that it must be deep. */
const clearOfSway = 2;
/** Slowest that it grows, as a share of the pace of the smoke rule: it may smoulder. */
const lonePace = 0.25;
/** Steps of a coarse scale by which rounding may leave it short of what smoke takes at least. */
const roundedOff = -0.5;

/** Whether a lone hump, clear of any sway, was seen to grow, however slowly. */
const growsAlone = (picture: Unsorted, e: Excursion, f: Family | undefined): boolean =>
  isLoneHump(e, f, ragged) &&
  e.onsetRows > 1 &&
  e.end - e.start <= longestLone &&
  e.depth >= clearOfSway * swayAt(picture, e) &&
  growsAsSmoke(picture, e, lonePace, roundedOff);

/**
 * Slowest growth of a dip without a family that is taken for smoke in doubt, as a share of the pace of the smoke rule:
 * somewhat under it, and half of it where the loss doubles on to a peak, as smouldering does, rather than levels off, as a
 * film. Own choice, as the three below: they part simulated mist from simulated smouldering.
 */
const doubtfulPace = 0.85;
const doubtfulPaceToPeak = 0.45;
/** Bottom as a share of the greatest depth under which a dip is a peak. */
const peaked = 0.65;
/** Steps of a coarse scale by which a growth must pass the least that smoke takes, to stand clear of them. Own choice. */
const clearSteps = 1.5;
/**
 * Few samples that go up and down so often, and very few that dither by more than this share of the depth, are noise. Own
 * choice.
 */
const upsAndDowns = 6;
const fewSamples = 60;
const dithers = 0.5;
const veryFew = 7;

/**
 * Whether a dip grew at a share of the pace or faster, though too slowly, or in too few samples, to be called a climb.
 *
 * @param share of the pace of the smoke rule that its growth must have, or a peak's if that is less
 * @param steps of the scale by which it must pass what smoke takes at least
 */
function growsAsSmoke(picture: Unsorted, e: Excursion, share: number, steps = clearSteps): boolean {
  const { view, slowLimit } = picture;
  if (
    e.depth < Math.max(smokeGrowth.value / 100 + steps * view.quantum, 1.5 * slowLimit) ||
    e.deepSamples < 4 ||
    (e.raggedness > upsAndDowns && e.deepSamples < fewSamples) ||
    (e.unevenness > dithers && e.deepSamples < veryFew) ||
    followsStep(picture, e) ||
    // At once, and for good: no growth.
    (e.onsetRows <= 1 && !e.open && !Number.isFinite(e.recovery))
  )
    return false;
  // The onset lies somewhere between the samples at its ends: by an interval shorter at most.
  const onset = Math.max(e.onset - view.interval, view.interval, 1000);
  const pace = (e.bottom < peaked * e.depth ? Math.min(share, doubtfulPaceToPeak) : share) * slowestSmoke.value;
  return lossBy(picture, e) / (onset / 60_000) >= pace;
}

/** Loss of a depth [dB]. */
const lossAt = (depth: number): number => -tenLog * Math.log(Math.max(0.02, 1 - depth));

/** Loss of an excursion against the level before it [dB]: what dirt or aim have taken already counts no more. */
export const lossBy = ({ view, depth }: Unsorted, e: Excursion): number =>
  lossAt(e.depth / Math.max(0.05, (view.trace.level[e.from] as number) + (depth[e.from] as number)));

/** Whether an excursion is what a step leaves: its onset is the step itself, which did not grow. */
const followsStep = ({ parts }: Unsorted, e: Excursion): boolean =>
  parts.steps.some((s) => Math.abs(s.row - e.from) <= 2 && s.loss > 0.6 * lossAt(e.depth));

/** Natural log of the time out over the time in from which a dip lingers as dust does. Own choice. */
const lingers = 0.6;

/** Whether dips come as they go, as a patch of sun does: the excursion and its like taken together. */
const comesAsItGoes = (view: View, e: Excursion, { members }: Family): boolean =>
  median([e, ...members].map((dip) => slowerOut(dip, view.interval))) < lingers;

/** Lamps: on and off at the same minute on other days, flat between. */
const isSwitched = (e: Excursion, f: Family | undefined): boolean =>
  f !== undefined &&
  f.otherDays >= 3 &&
  f.hoursApart < 0.4 &&
  e.onsetRows <= 2 &&
  e.recoveryRows <= 2 &&
  e.deepSamples > 3 &&
  e.unevenness < 0.35 &&
  !f.oneWeekday;

/** Most of the light that a knock takes as a rule, and how long it must stand to the end of the log [ms]: own choice. */
const partial = 0.6;
const stands = 2 * hour;

/** Other days on which a load must have come, and the most light that it takes. */
const loadDays = 6;
const shallow = 0.3;

/** A structure under a load: steps down and up too shallow for an object, flat between, again and again. Own choice. */
const isLoad = ({ view }: Unsorted, e: Excursion, f: Family | undefined): boolean =>
  f !== undefined &&
  f.otherDays >= loadDays &&
  e.bottom < shallow &&
  e.bottom > 4 * view.sampleNoise &&
  e.deepSamples > 3 &&
  e.onsetRows <= 2 &&
  e.recoveryRows <= 2 &&
  e.unevenness <= Math.max(0.12, (2.5 * view.sampleNoise + view.quantum) / e.bottom);

/** Time between the hours of days [h], and spread of the sizes (natural log), from which what comes and goes is no lamp. Own choice. */
const noClockwork = 0.8;
const sizesApart = 0.12;

/** Whether it comes at any hour and size, as loads do that bring an aim nearer to its peak, and lamps and sun do not. */
const isAnySize = (e: Excursion, f: Family | undefined): boolean =>
  f !== undefined &&
  f.hoursApart >= noClockwork &&
  robustSpread(
    [e, ...f.members].map(({ bottom }) => Math.log(bottom)),
    0,
  ) >= sizesApart;

/** Whether an excursion is a smooth dip of hours about the coldest hours, as mist is. */
export const isLikeFilm = (view: View, e: Excursion): boolean =>
  e.sign === 1 && filmScore(e, solarHour(view, (e.start + e.end) / 2)) > 0;

/** Above 0 for a smooth dip of hours about the coldest hours; measured on simulated mist and dust. */
function filmScore(e: Excursion, at: number): number {
  const long = (e.end - e.start) / hour;
  if (long < 1.2 || e.onset < 0.25 * hour) return -1;
  const fromColdest = Math.max(0, hoursBetween(at, coldest) - 3);
  return (
    0.5 * Math.min(3, long - 1.2) +
    1.2 * Math.min(1.5, e.onset / hour) -
    6 * Math.max(0, e.unevenness - 0.25) -
    2 * Math.max(0, e.raggedness - 1.4) -
    0.9 * fromColdest -
    0.5
  );
}

/**
 * Sway from which it is asked whether the cycle made an excursion, rows on either side that show the level beside it, and
 * share of its bottom by which the level itself must leave both sides. Own choice.
 */
const leastSway = 0.012;
const besideRows = 5;
const ownShare = 0.25;

/** Whether an excursion is there only because the daily cycle was taken off: the level itself leaves not both sides. */
function isOfCycle(picture: Unsorted, e: Excursion): boolean {
  if (swayAt(picture, e) < leastSway) return false;
  const { view, depth } = picture;
  const { level } = view.trace;
  const before = level.subarray(Math.max(0, e.from - besideRows), e.from);
  const after = e.open ? before : level.subarray(e.to + 1, e.to + 1 + besideRows);
  const within = level.subarray(e.from, e.to + 1);
  const deep = median(within.filter((_, i) => 2 * e.sign * (depth[e.from + i] as number) > e.depth));
  // NaN, at an end of the log, is no lesser change.
  const least = Math.min(
    ...[before, after].map((side) => e.sign * (median(side) - deep)).filter((v) => !Number.isNaN(v)),
  );
  return least < ownShare * e.bottom;
}

/** Whether a dip is more than the daily cycle's fit and a few wild samples leave behind. */
function standsOut(picture: Unsorted, e: Excursion): boolean {
  const { view } = picture;
  if (e.deepSamples < 2 && e.depth < 12 * view.sampleNoise) return false;
  const sway = swayAt(picture, e);
  if (sway < 0.012) return true;
  // Beside a large sway only what comes in minutes is no part of it.
  return e.depth > 0.7 * sway || (e.onset < 0.4 * hour && e.depth > 0.5 * sway && e.end - e.start < 3 * hour);
}

/**
 * Deep samples from which a dip is seen to be even, as five may be by chance; from which its like are seen to be or not, and
 * the share of them that must be; unevenness under which it is even, and how many times as uneven, or as what noise leaves,
 * its like may be: own choice.
 */
const steadySamples = 6;
const likeSamples = 4;
const shareTold = 0.5;
const evenest = 0.2;
const timesAsUneven = 3;
const leastUneven = 0.05;

/** Whether a dip is even while hardly any of its like is: they agree in size, but not in shape. */
function isSteadiest(e: Excursion, f: Family | undefined): boolean {
  if (f === undefined || e.deepSamples < steadySamples || e.unevenness > evenest) return false;
  const told = f.members.filter(({ deepSamples }) => deepSamples >= likeSamples);
  const most = timesAsUneven * Math.max(e.unevenness, leastUneven);
  const even = told.filter(({ unevenness }) => unevenness <= most).length;
  return told.length >= Math.max(familyDays, shareTold * f.others) && even < familyDays;
}
