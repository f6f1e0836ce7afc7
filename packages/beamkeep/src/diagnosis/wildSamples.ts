import { median, quantile, robustSpread } from '../statistics/index.js';
import { comesBack, isOfSwing } from './alternates.js';
import type { Climb } from './climb.js';
import { heldSamples, overRows } from './climbs.js';
import { climbIn } from './climbsWithin.js';
import { beside, type Crest, isCrest } from './crests.js';
import type { Excursion } from './excursions.js';
import type { Unsorted } from './picture.js';
import { noiseBefore } from './roughness.js';
import { levelOf } from './view.js';

/*
 * Whether an excursion is no more than wild samples: noise that reaches so far, goes both ways, or flickers. What grew
 * clearly beyond the noise before it and stays is none, unless it flickers; nor is what goes one course but once.
 */

/** A few uneven samples no deeper than the noise about them reaches, or as far above the level as below: noise. */
export function isNoise(picture: Unsorted, e: Excursion): boolean {
  const { view, raised } = picture;
  const sigma = (raised[(e.from + e.to) >> 1] as number) * view.sampleNoise;
  if (sigma > 1.5 * view.sampleNoise && isCalm(picture, e)) return flickers(picture, e);
  // What climbed, clearly beyond the noise, is no few wild samples however it dithers, or however soon it is gone.
  const climb = climbIn(picture, e);
  // One wild sample may stand deep on a growth that is itself within the noise about it.
  const held = climb !== undefined && (e.deepSamples >= heldSamples || climb.lost >= 5 * sigma);
  const grew = held && climb.rows >= overRows;
  const few = (e.deepSamples < 6 && !grew) || (e.unevenness > 0.5 && climb === undefined && !lasts(picture, e, sigma));
  if (climb !== undefined && standsOff(picture, climb)) return flickers(picture, e);
  if (few && e.depth < (sigma > 1.5 * view.sampleNoise ? 5 : 8) * sigma) return true;
  if (sigma > 1.5 * view.sampleNoise) return few || (e.depth < 5 * sigma && !isSustained(picture, e, sigma));
  if (few && (e.unevenness > 0.3 || e.deepSamples <= 3) && bothWays(picture, e)) return true;
  return flickers(picture, e);
}

/** Samples after a growth that must all be off by this share of it, and spreads before it that it must pass. Own choice. */
const samplesAfter = 12;
const shareOff = 0.25;
const clearSpreads = 8;

/**
 * Whether what grew out of calm samples keeps away from the level before, however it dithers: smoke hangs, while noise and
 * a shake come back to the usual level between samples.
 */
function standsOff({ view, parts, rough }: Unsorted, { from, to, rise, lost }: Climb): boolean {
  const before = noiseBefore(rough, from);
  if (before === undefined || lost < clearSpreads * Math.max(before, view.quantum)) return false;
  const base = parts.offCycle[from] as number;
  const after = parts.offCycle.subarray(to, to + samplesAfter);
  return after.length === samplesAfter && after.every((loss) => loss - base > shareOff * rise);
}

/**
 * Fewest rows, and spread of the samples before as a share of the depth, from which an excursion may be noise that goes on;
 * rows before it whose middle is the level before. Own choice.
 */
const fewestRows = 6;
const spreadBefore = 0.12;
const rowsBefore = 24;

/** Whether an excursion is part of a swing about the level before it, or of noise that was there before it. */
export function isSwing({ depth, rough, parts: { offCycle } }: Unsorted, e: Excursion): boolean {
  const before = levelOf(median(offCycle.subarray(Math.max(0, e.from - rowsBefore), e.from)));
  const off = (i: number): number => (before - levelOf(offCycle[i] as number)) / e.depth;
  if (isOfSwing(off, e.from, e.to, depth.length)) return true;
  const long = e.to - e.from + 1 >= fewestRows && (noiseBefore(rough, e.from) ?? 0) >= spreadBefore * e.depth;
  return long && comesBack(off, e.from, e.to + 1);
}

/** Deep samples of an excursion from which its own spread can be told, and spreads that it must then be deep. Own choice. */
const calmSamples = 6;
const calmDepth = 12;

/** Whether the samples of an excursion lie close together, however rough those about it are: noise has paused, light is lost. */
function isCalm({ depth, view }: Unsorted, e: Excursion): boolean {
  if (e.deepSamples < calmSamples || e.to - e.from < calmSamples) return false;
  // Second differences, of which a slope makes nothing: of independent samples they have six times the variance.
  const bends = new Float64Array(e.to - e.from - 1);
  for (let i = 0; i < bends.length; i++) {
    const at = e.from + i;
    bends[i] = (depth[at] as number) - 2 * (depth[at + 1] as number) + (depth[at + 2] as number);
  }
  return e.depth > (calmDepth * robustSpread(bends, view.quantum)) / Math.sqrt(6);
}

/**
 * Spreads of a mean of its deep samples that an excursion must pass, to be more than noise that stays to one side by chance.
 * Own choice.
 */
const sustainedBy = 8;

/** Whether so many samples of an excursion stand off that noise does not keep them there by chance. */
const isFarOff = ({ bottom, deepSamples }: Excursion, sigma: number): boolean =>
  bottom * Math.sqrt(deepSamples) > sustainedBy * sigma;

/** Whether the samples of an excursion stand off so far, and to one side alone, that noise does not make it. */
const isSustained = (picture: Unsorted, e: Excursion, sigma: number): boolean =>
  isFarOff(e, sigma) && !bothWays(picture, e);

/** Raggedness under which a dip is one course, and most others like it on other days. Own choice. */
const oneCourse = 3;
const hardlyAny = 1;

/** Whether an excursion stays off in one course, as on hardly any other day: noise goes up and down, and comes again. */
const lasts = ({ family }: Unsorted, e: Excursion, sigma: number): boolean =>
  isFarOff(e, sigma) && e.raggedness < oneCourse && (family.get(e)?.others ?? 0) <= hardlyAny;

/**
 * Most deep samples of a dip that may be the end of a shake's or a noise's own range, rows to either side that show that
 * range, and how often the range it must be deep to stand out. Own choice.
 */
const tailSamples = 4;
const tailRows = 24;
const tailTimes = 3.5;

/** Whether a dip of few samples that did not grow is no more than the end of what the samples about it do all the time. */
export function isTail(picture: Unsorted, e: Excursion): boolean {
  if (e.deepSamples > tailSamples || climbIn(picture, e) !== undefined) return false;
  const { depth } = picture;
  const about = Float64Array.of(
    ...depth.subarray(Math.max(0, e.from - tailRows), e.from),
    ...depth.subarray(e.to + 1, e.to + 1 + tailRows),
  );
  return e.depth < tailTimes * (quantile(about, 0.9) - quantile(about, 0.1));
}

/** Shortest time that smoke comes and goes in [ms]; what does so again and again within it shakes. Own choice. */
const flickering = 30_000;

/** Whether an excursion is one of many alike that follow one another. */
function flickers({ excursions, view }: Unsorted, e: Excursion): boolean {
  const crest = ({ start, end, depth }: Excursion): Crest => ({ start, length: end - start, size: depth });
  const own = crest(e);
  const near = beside(excursions, excursions.indexOf(e)).filter((o) => o.sign === e.sign);
  const quick = near.filter(
    (o) =>
      o !== e &&
      Math.abs(o.start - e.start) <= 10 * flickering &&
      Math.max(o.depth / e.depth, e.depth / o.depth) < 2 &&
      o.end - o.start < 4 * own.length + 1000,
  );
  return (own.length <= flickering && quick.length >= 5) || isCrest(near.map(crest), own, view.interval);
}

/** Whether the level stands about as far off on the other side within some samples of an excursion. */
function bothWays({ excursions, view }: Unsorted, e: Excursion): boolean {
  const reach = Math.max(e.end - e.start, (e.deepSamples <= 3 ? 60 : 10) * view.interval);
  return excursions.some(
    (o) => o.sign !== e.sign && o.end >= e.start - reach && o.start <= e.end + reach && o.depth > 0.4 * e.depth,
  );
}
