import { hour } from '../columns/index.js';
import { slowestSmoke, smokeGrowth } from '../numbers/index.js';
import { median, robustSpread } from '../statistics/index.js';
import { cellAt } from './cells.js';
import type { Climb } from './climb.js';
import { type Excursion, slowerOut } from './excursions.js';
import { type Family, hoursBetween, solarHour } from './families.js';
import type { Kind, Picture } from './picture.js';
import { noiseBefore } from './roughness.js';
import { levelOf, tenLog, type View } from './view.js';

/*
 * Each excursion is sorted by what it looks like. Smoke goes first and is only ruled out by the edges of an object, by
 * growth too slow for the smoke rule, or by a family of its like on other days; never by a better story.
 */

type Unsorted = Omit<Picture, 'kind'>;

/** Other days on which the like must have come before an excursion counts as one of a family. */
const familyDays = 2;

/** Sorts the excursions of a beam. */
export function sortExcursions(picture: Unsorted): Map<Excursion, Kind> {
  const alone = new Map(picture.excursions.map((e) => [e, kindOf(picture, e)] as const));
  const kinds = new Map(picture.excursions.map((e) => [e, agreed(picture, alone, e)] as const));
  // Where mist comes often, a weak dip in its hours is more mist.
  let nights = 0;
  for (const kind of kinds.values()) if (kind === 'film') nights++;
  if (nights >= mistyNights) {
    for (const [e, kind] of kinds) {
      const at = solarHour(picture.view, (e.start + e.end) / 2);
      if (kind === 'dust' && hoursBetween(at, coldest) < 5 && e.end - e.start >= leastMist) kinds.set(e, 'film');
    }
  }
  return kinds;
}

/** Nights of mist that make a misty beam, and the coldest solar hour [h]. */
const mistyNights = 4;
const coldest = 5;
/** Shortest dip that is taken for mist in such hours [ms]: a film neither forms nor dries in minutes. Own choice. */
const leastMist = hour / 2;

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
  if (e.sign === -1) return sharp || isSwitched(e, f) ? 'light' : 'slow';
  if (isSwitched(e, f)) return 'light';
  const recurs = (hasFamily(f) || growsAsUsual(picture, e)) && !isSteadiest(e, f);
  const often = f !== undefined && f.otherDays >= 4;
  // A dip too short to show its bottom that comes on many days is a puff of dust as well as a passing object.
  if (isNudge(picture, e, f)) return 'knock';
  if (isBlock(picture, e) && !(often && e.deepSamples <= 3 && e.depth < 0.7)) {
    // The same flat shallow step at working hours on many days: the structure under a load, rather than an object.
    if (f !== undefined && f.otherDays >= loadDays && e.depth < shallow && e.deepSamples > 3) return 'load';
    // An object is taken away; what fell in part and still stands there hours later, to the end of the log, was knocked.
    return e.open && e.bottom < partial && long >= stands ? 'knock' : 'block';
  }
  const climb = climbIn(picture, e);
  if (!recurs && (climb !== undefined || growsAsSmoke(picture, e, doubtfulPace))) return 'smoke';
  if (isLoad(picture, e, f)) return 'load';
  // The sun keeps to its minute from day to day, work only to its hours.
  const byDay = at > 4 && at < 20.5;
  const daily = f !== undefined && f.otherDays >= 3 && f.hoursApart < 0.6 && !f.oneWeekday;
  if (byDay && sharp && daily && comesAsItGoes(view, e, f)) return 'light';
  if (filmScore(e, at) > 0) return 'film';
  if (recurs) return standsOut(picture, e) ? 'dust' : 'slow';
  // What nothing else explains is given more of a doubt.
  return standsOut(picture, e) && growsAsSmoke(picture, e, doubtfulPaceToPeak) ? 'smoke' : 'slow';
}

/** Whether several of its like came on other days. */
const hasFamily = (f: Family | undefined): boolean => f !== undefined && f.otherDays >= familyDays && f.others >= 3;

/**
 * Slowest growth of a lone dip that is taken for smoke in doubt, as a share of the pace of the smoke rule: somewhat under
 * it, and half of it where the loss doubles on to a peak, as smouldering does, rather than levels off, as a film. Own
 * choice, as the three below: they part simulated mist from simulated smouldering.
 */
const doubtfulPace = 0.85;
const doubtfulPaceToPeak = 0.45;
/** Bottom as a share of the greatest depth under which a dip is a peak. */
const peaked = 0.65;
/** Few samples that go up and down so often, and very few that dither by more than this share of the depth, are noise. */
const upsAndDowns = 6;
const fewSamples = 60;
const dithers = 0.5;
const veryFew = 7;

/**
 * A lone dip whose onset is quick, though too few samples show it to be called a climb.
 *
 * @param share of the pace of the smoke rule that its growth must have, unless it is a peak
 */
function growsAsSmoke(picture: Unsorted, e: Excursion, share: number): boolean {
  const { view, slowLimit } = picture;
  if (
    e.depth < Math.max(smokeGrowth.value / 100 + 1.5 * view.quantum, 1.5 * slowLimit) ||
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
  const pace = (e.bottom < peaked * e.depth ? doubtfulPaceToPeak : share) * slowestSmoke.value;
  return lossBy(picture, e) / (onset / 60_000) >= pace;
}

/** Loss of a depth [dB]. */
const lossAt = (depth: number): number => -tenLog * Math.log(Math.max(0.02, 1 - depth));

/** Loss of an excursion against the level before it [dB]: what dirt or aim have taken already counts no more. */
const lossBy = ({ view, depth }: Unsorted, e: Excursion): number =>
  lossAt(e.depth / Math.max(0.05, (view.trace.level[e.from] as number) + (depth[e.from] as number)));

/** Whether an excursion is what a step leaves: its onset is the step itself, which did not grow. */
const followsStep = ({ parts }: Unsorted, e: Excursion): boolean =>
  parts.steps.some((s) => Math.abs(s.row - e.from) <= 2 && s.loss > 0.6 * lossAt(e.depth));

/** A few uneven samples no deeper than the noise about them reaches, or as far above the level as below: noise. */
function isNoise(picture: Unsorted, e: Excursion): boolean {
  const { view, raised } = picture;
  const sigma = (raised[(e.from + e.to) >> 1] as number) * view.sampleNoise;
  if (sigma > 1.5 * view.sampleNoise && isCalm(picture, e)) return flickers(picture, e);
  // What climbed, clearly beyond the noise, is no few wild samples however it dithers, or however soon it is gone.
  const climb = climbIn(picture, e);
  const few = (e.deepSamples < 6 && (climb?.rows ?? 0) < overRows) || (e.unevenness > 0.5 && climb === undefined);
  if (climb !== undefined && standsOff(picture, climb)) return flickers(picture, e);
  if (few && e.depth < (sigma > 1.5 * view.sampleNoise ? 5 : 8) * sigma) return true;
  if (sigma > 1.5 * view.sampleNoise) return few || (e.depth < 5 * sigma && !isSustained(picture, e, sigma));
  if (few && (e.unevenness > 0.3 || e.deepSamples <= 3) && bothWays(picture, e)) return true;
  return flickers(picture, e);
}

/** Samples after a growth that must all be off by this share of it, and spreads before it that it must pass. Own choice. */
const staysOff = { samples: 12, share: 0.25, spreads: 8 };

/**
 * Whether what grew out of calm samples keeps away from the level before, however it dithers: smoke hangs, while noise and
 * a shake come back to the usual level between samples.
 */
function standsOff({ view, parts, rough }: Unsorted, { from, to, rise, lost }: Climb): boolean {
  const before = noiseBefore(rough, from);
  if (before === undefined || lost < staysOff.spreads * Math.max(before, view.quantum)) return false;
  const base = parts.offCycle[from] as number;
  const after = parts.offCycle.subarray(to, to + staysOff.samples);
  return after.length === staysOff.samples && after.every((loss) => loss - base > staysOff.share * rise);
}

/** Rows from which a growth is one by its course alone, after the smoke rule. */
const overRows = 3;

/** Deep samples of an excursion from which its own spread can be told, and spreads that it must then be deep. Own choice. */
const calm = { samples: 6, depth: 12 };

/** Whether the samples of an excursion lie close together, however rough those about it are: noise has paused, light is lost. */
function isCalm({ depth, view }: Unsorted, e: Excursion): boolean {
  if (e.deepSamples < calm.samples || e.to - e.from < calm.samples) return false;
  // Second differences, of which a slope makes nothing: of independent samples they have six times the variance.
  const bends = new Float64Array(e.to - e.from - 1);
  for (let i = 0; i < bends.length; i++) {
    const at = e.from + i;
    bends[i] = (depth[at] as number) - 2 * (depth[at + 1] as number) + (depth[at + 2] as number);
  }
  return e.depth > (calm.depth * robustSpread(bends, view.quantum)) / Math.sqrt(6);
}

/** Spreads of a mean of its deep samples that an excursion must pass, to be more than noise that stays to one side by chance. */
const sustainedBy = 8;

/** Whether so many samples of an excursion stand off, and to one side alone, that noise does not make it. */
const isSustained = (picture: Unsorted, e: Excursion, sigma: number): boolean =>
  e.bottom * Math.sqrt(e.deepSamples) > sustainedBy * sigma && !bothWays(picture, e);

/** Shortest time that smoke comes and goes in [ms]; what does so again and again within it shakes. */
const flickering = 30_000;
/**
 * What comes again and again at any pace, all of one size: a swing. So many alike within so many lengths on either side
 * and half a day, of depths within this factor. Own choice.
 */
const swings = { alike: 8, lengths: 12, longest: 12 * hour, depth: 1.35 };
/** Excursions that are looked at on either side. */
const looks = 32;

/** Whether two lengths lie within a factor of each other, give or take the interval between samples. */
const isWithin = (a: number, b: number, factor: number, interval: number): boolean =>
  a < factor * b + interval && b < factor * a + interval;

/** Whether an excursion is one of many alike that follow one another. */
function flickers({ excursions, view }: Unsorted, e: Excursion): boolean {
  const long = e.end - e.start;
  const at = excursions.indexOf(e);
  const reach = Math.min(swings.longest, swings.lengths * (long + view.interval));
  let quick = 0;
  let steady = 0;
  for (let k = Math.max(0, at - looks); k <= Math.min(excursions.length - 1, at + looks); k++) {
    const o = excursions[k] as Excursion;
    if (k === at || o.sign !== e.sign) continue;
    const depth = Math.max(o.depth / e.depth, e.depth / o.depth);
    const apart = Math.abs(o.start - e.start);
    if (apart <= 10 * flickering && depth < 2 && o.end - o.start < 4 * long + 1000) quick++;
    if (apart <= reach && depth < swings.depth && isWithin(o.end - o.start, long, 3, view.interval)) steady++;
  }
  return (long <= flickering && quick >= 5) || steady >= swings.alike;
}

/** Whether the level stands about as far off on the other side within some samples of an excursion. */
function bothWays({ excursions, view }: Unsorted, e: Excursion): boolean {
  const reach = Math.max(e.end - e.start, (e.deepSamples <= 3 ? 60 : 10) * view.interval);
  return excursions.some(
    (o) => o.sign !== e.sign && o.end >= e.start - reach && o.start <= e.end + reach && o.depth > 0.4 * e.depth,
  );
}

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
  e.bottom > 6 * view.sampleNoise &&
  e.deepSamples > 3 &&
  e.onsetRows <= 2 &&
  e.recoveryRows <= 2 &&
  e.unevenness <= Math.max(0.12, (2.5 * view.sampleNoise) / e.bottom);

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

/** Swing of the daily cycle about an excursion, share of clean air. */
export function swayAt({ parts }: Unsorted, e: Excursion): number {
  if (!parts.cycleFitted) return 0;
  const { cells, cycle, slow } = parts;
  const at = cellAt(cells, (e.start + e.end) / 2);
  const half = Math.round((12 * hour) / cells.width);
  const day = cycle.subarray(Math.max(0, at - half), at + half);
  return (levelOf(slow[at] as number) * (Math.max(...day) - Math.min(...day))) / tenLog;
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

/** Fast in, flat, fast out: an object. */
export const isBlock = (picture: Unsorted, e: Excursion): boolean =>
  e.bottom >= (e.deepSamples <= 2 ? 0.15 : 0.08) &&
  e.bottom >= 0.35 * swayAt(picture, e) &&
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
 * Most light that a knock which is put right again takes, the shortest that it stands [ms], and how many times as long as
 * its edges. What takes so little so evenly for hours is no object in the path as a rule, and smoke neither comes nor goes
 * at once. Common practice, no source; the figures are an own choice.
 */
const nudge = { most: 0.2, stands: hour, edges: 20, spreads: 8 };

/** A slight loss at once that stands for hours and is gone at once, on this day alone: knocked, and put right. */
const isNudge = (picture: Unsorted, e: Excursion, f: Family | undefined): boolean =>
  !e.open &&
  e.bottom < nudge.most &&
  e.bottom > Math.max(picture.slowLimit, nudge.spreads * picture.view.sampleNoise) &&
  e.end - e.start >= Math.max(nudge.stands, nudge.edges * (e.onsetRows + e.recoveryRows) * picture.view.interval) &&
  (f === undefined || f.otherDays < familyDays) &&
  isSharp(picture, e) &&
  isFlat(picture, e);

/** Whether most of an excursion's depth came over so many rows or more: more than one sample stands between. */
const growsOver = (picture: Unsorted, e: Excursion, rows: number): boolean =>
  climbsIn(picture, e).some((c) => c.rows >= rows && c.lost > 0.5 * e.bottom);

/**
 * Deep samples from which the evenness of a dip can be told, unevenness under which it is even, and how many times as
 * uneven, or as what noise leaves, its like may be: own choice.
 */
const steady = { samples: 4, own: 0.2, times: 3, least: 0.05 };

/** Whether a dip is even while hardly any of its like is: they agree in size, but not in shape. */
function isSteadiest(e: Excursion, f: Family | undefined): boolean {
  if (f === undefined || e.deepSamples <= steady.samples || e.unevenness > steady.own) return false;
  const told = f.members.filter(({ deepSamples }) => deepSamples >= steady.samples);
  const most = steady.times * Math.max(e.unevenness, steady.least);
  const even = told.filter(({ unevenness }) => unevenness <= most).length;
  return told.length >= familyDays && even < familyDays;
}

/** Longest edge of an object [ms]: two seconds, and what the jitter of the samples about them may add. */
const fastEdge = (interval: number): number => 2000 + Math.min(200, 0.2 * interval);

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
function growsAsUsual(picture: Unsorted, e: Excursion): boolean {
  const climbs = climbsIn(picture, e).filter((c) => picture.leavingClimbs.has(c));
  const most = Math.max(0, ...climbs.map((c) => c.lost));
  return most > 0 && e.depth <= addsUp * most && climbs.every((c) => picture.usualClimbs.has(c));
}

/** Growths within an excursion that have no like on other days, however usual it is itself: smoke may come amid mist or dust. */
export const unusualClimbs = (picture: Unsorted, e: Excursion): Climb[] =>
  climbsIn(picture, e).filter((c) => picture.leavingClimbs.has(c) && !picture.usualClimbs.has(c));
