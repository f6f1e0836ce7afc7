import { hour, rowAt } from '../../columns/index.js';
import { smokeActShare, smokeGrowth } from '../../numbers/index.js';
import type { Cause, Claim } from '../cause.js';
import type { Climb } from '../climb.js';
import { climbIn, climbsIn, unusualClimbs } from '../climbsWithin.js';
import { isOwnEdge } from '../edges.js';
import type { Excursion } from '../excursions.js';
import type { Kind, Picture } from '../picture.js';
import type { View } from '../view.js';
import { isSwing } from '../wildSamples.js';
import { evidence, logistic, percent, spell } from '../wording.js';
import { ditherings } from './dithering.js';
import { dipsAtHours, smokeLikelihood } from './smokeSigns.js';

/**
 * Cannot be told from smoke: decided before every other cause, and removed by none.
 *
 * Always so: (1) a stretch that the equipment would call fire; (2) growth to 3 % or more, clearly beyond the noise, no
 * slower than 0.02 dB a minute, that is not one of a family of its like on other days. In doubt also what came too fast, or
 * too slowly, to be seen to grow so, and hangs and dithers.
 */
export const smokeLike: Cause = {
  word: 'smoke-like',
  meaning: 'cannot be told from smoke',
  shows: 'loss that grows over seconds, minutes or (smouldering) hours, then is held, grows or clears slowly',
  otherBeams: 'tell nothing',
  action: 'Treat as fire: look on site at once, or if it is past, find out what happened there at that time.',
  settles: 'Someone who was there, the fire log, a camera. Until then it counts as smoke.',
  claims: (picture) => {
    const dipsAtHour = dipsAtHours(picture);
    return episodes(picture.view, fires(picture), parted(picture.view, [...growths(picture), ...hanging(picture)])).map(
      (s) => claim(picture, s, dipsAtHour(s.start, s.end)),
    );
  },
};

interface Suspect {
  start: number;
  end: number;
  fire: boolean;
  /** Whether it grew as smoke may, rather than stood deep for another reason. */
  grown: boolean;
  /** Whether it grew again out of an episode that had cleared: never joined to that one. */
  again?: boolean;
  /** Whether it was not seen to grow, but hangs and dithers. */
  dithers?: boolean;
  lost: number;
  growth: number;
  /** The climb by which it grew, if any. */
  climb?: Climb;
  /** Longest time in which it may have cleared [ms]; infinite where it never did. */
  clearing: number;
}

/** How likely smoke is where the signal is fire for its depth alone, and something else explains the depth. Own choice. */
const explainedElsewhere = 0.03;

/** Loss at which a fire signal that grew is smoke as often as not, and how fast that rises with its logarithm. Own choice. */
const evenFire = 0.1;
const steepness = 1.5;

/**
 * How likely smoke is. It counts as smoke however unlikely: this only says how sure that is. No habit of the beam speaks
 * against a fire signal that grew, and it is never less likely than the same growth without the signal.
 */
function likelihood({ fire, grown, lost, clearing }: Suspect, dipsAtThatHour: number): number {
  if (!grown) return explainedElsewhere;
  if (!fire) return smokeLikelihood({ lost, clearing, dipsAtThatHour });
  const grew = logistic(steepness * Math.log(Math.max(lost, smokeGrowth.value / 100) / evenFire));
  return Math.max(grew, smokeLikelihood({ lost, clearing, dipsAtThatHour: 0 }));
}

const asSmoke = { fire: false, grown: true };

/** Kinds of excursion that come with sharp edges. */
const atOnce: ReadonlySet<Kind | undefined> = new Set(['block', 'knock']);

/** Kinds of excursion within which a growth without its like is told on its own. */
const growsAmid: ReadonlySet<Kind | undefined> = new Set(['film', 'dust', 'slow', 'block', 'knock']);

function fires(picture: Picture): Suspect[] {
  return picture.fires.map((f) => {
    const within = picture.excursions.filter((e) => e.sign === 1 && e.end >= f.start && e.start <= f.end);
    const grown = within.filter((e) => climbIn(picture, e) !== undefined && !atOnce.has(picture.kind.get(e)));
    const lost = lossBetween(picture, f.start, f.end);
    const clearing = Math.max(0, ...grown.map((e) => clearingOf(picture, e)));
    return { ...f, fire: true, grown: grown.length > 0, lost, growth: 0, clearing };
  });
}

function growths(picture: Picture): Suspect[] {
  return picture.excursions.flatMap((e) => {
    const kind = picture.kind.get(e);
    if (kind !== 'smoke') {
      const amid = growsAmid.has(kind) && !isSwing(picture, e) ? unusualClimbs(picture, e) : [];
      return amid.filter((c) => !atOnce.has(kind) || !isOwnEdge(e, c)).map((c) => grownOver(picture, e, c));
    }
    const climbs = climbsIn(picture, e).filter((c) => !picture.usualClimbs.has(c));
    if (climbs.length > 0) return grownIn(picture, e, climbs);
    const growth = Number.isFinite(e.onset) ? e.onset : 0;
    const { start, end } = e;
    return [
      { ...asSmoke, growth, start, end, lost: lossWithin(picture, e, start, end), clearing: clearingOf(picture, e) },
    ];
  });
}

/** What was not seen to grow, hangs and dithers. */
const hanging = (picture: Picture): Suspect[] =>
  ditherings(picture).map(({ start, end, lost }) => ({
    ...asSmoke,
    ...{ start, end, lost, growth: 0, clearing: Number.POSITIVE_INFINITY, dithers: true },
  }));

/** Time from four fifths of an excursion to a sixth; it may have begun a sample earlier than it shows [ms]. */
const clearingOf = ({ view }: Picture, { recovery }: Excursion): number => recovery + view.interval;

/** Share of the growth before that one must have which comes while that still stands, to be an episode of its own. Own choice. */
const growsAgain = 0.3;

/** Growths in order; where a second fire begins while what grew before still stands, that ends. */
function parted({ trace: { time, until } }: View, growths: readonly Suspect[]): Suspect[] {
  const inOrder = [...growths].sort((a, b) => a.start - b.start);
  let standing: Suspect[] = [];
  for (const s of inOrder) {
    const { climb } = s;
    if (climb === undefined) continue;
    const begins = time[climb.from] as number;
    standing = standing.filter((o) => o.end >= begins);
    const before = standing[0]?.climb;
    const stands = before !== undefined && before.cleared > climb.from;
    if (stands && climb.rise >= growsAgain * before.rise && begins - (time[before.to] as number) >= before.time) {
      for (const o of standing) o.end = until[climb.from - 1] ?? begins;
      s.again = true;
    }
    if (climb === before) standing.push(s);
    else if (!stands || s.again) standing = [s];
  }
  return inOrder;
}

/** Times the length of an episode by which slow growth may have led up to it. Own choice. */
const mostLead = 2;

/** The growths of an excursion, the first with what led up to it. */
function grownIn(picture: Picture, e: Excursion, climbs: readonly Climb[]): Suspect[] {
  const all = climbs.map((c) => grownOver(picture, e, c));
  const [climb] = climbs;
  const [first] = all;
  // What grew too slowly for a climb led up to it.
  if (climb !== undefined && first !== undefined && (picture.depth[climb.from] as number) >= smokeGrowth.value / 100) {
    if (e.start >= first.start - mostLead * (first.end - first.start)) first.start = Math.min(e.start, first.start);
  }
  return all;
}

/** One growth, from its begin until it has cleared: what else the excursion holds is another story. */
function grownOver(picture: Picture, e: Excursion, climb: Climb): Suspect {
  const { time, until } = picture.view.trace;
  const start = time[climb.from] as number;
  const clears = climb.cleared < time.length ? (until[climb.cleared - 1] as number) : e.end;
  const end = Math.max(clears, time[climb.to] as number);
  // The slow course may have followed what stays.
  const lost = Math.max(climb.lost, lossWithin(picture, e, start, end));
  const own =
    climb.cleared < time.length ? end - (time[climb.to] as number) + picture.view.interval : Number.POSITIVE_INFINITY;
  // Of something else, how that clears tells nothing of what grew amid it.
  const clearing = picture.kind.get(e) === 'smoke' ? clearingOf(picture, e) : own;
  return { ...asSmoke, growth: climb.time, climb, start, end, lost, clearing };
}

/** Greatest depth of an excursion between two instants, share of clean air. */
function lossWithin({ depth, view }: Picture, e: Excursion, from: number, to: number): number {
  let most = 0;
  for (let i = e.from; i <= e.to; i++) {
    const t = view.trace.time[i] as number;
    if (t >= from && t <= to) most = Math.max(most, depth[i] as number);
  }
  return most;
}

/** Greatest obscuration of a stretch, share of clean air; noise under the zero of the scale takes no more than all light. */
function lossBetween({ view }: Picture, start: number, end: number): number {
  const { time, low } = view.trace;
  let least = 1;
  for (let i = rowAt(time, start); i < time.length && (time[i] as number) <= end; i++) {
    least = Math.min(least, low[i] as number);
  }
  return 1 - Math.max(0, least);
}

/** Longest pause within one episode of a fire signal that comes and goes with the depth of something slow. */
const pauseOfFire = 6 * hour;
/** Longest pause within one episode of growth. */
const pauseOfGrowth = hour;

/**
 * Suspects joined into episodes. Growths join only what touches or nearly so, so that no smoke is lost in a longer
 * story; signals that merely come and go about the threshold make one episode each few hours.
 */
function episodes(view: View, fires: readonly Suspect[], growths: readonly Suspect[]): Suspect[] {
  const { time } = view.trace;
  const grown = flutter(
    joined(growths, (pause, length) => pause <= Math.min(pauseOfGrowth, length / 2)),
    fires,
    actsFrom(view),
  );
  for (const g of grown) {
    for (const f of fires) {
      if (f.start > g.end || f.end < g.start) continue;
      g.fire = true;
      // The signal's end belongs to the growth that set it off, unless it stands long after for its depth.
      if (f.end - g.end <= Math.min(pauseOfGrowth, (g.end - g.start) / 2)) g.end = Math.max(g.end, f.end);
    }
  }
  grown.push(...fires.filter((f) => f.grown && !grown.some((g) => g.start <= f.end && g.end >= f.start)));
  grown.sort((a, b) => a.start - b.start);
  // What stands past the threshold before and after a growth is a fire signal, too.
  const rest = fires.flatMap((f) => (grown.includes(f) ? [] : apart(time, f, grown)));
  const slow = joined(
    rest,
    (pause, _, from, to) => pause <= pauseOfFire && !grown.some((g) => g.start >= from && g.end <= to),
  );
  return [...grown, ...slow].sort((a, b) => a.start - b.start);
}

/** So many growths within so long come and go [ms]: one episode, to be looked into once. Own choice. */
const comeAndGo = 4;
const fluttering = 6 * hour;
/** Pause after which a growth that is to be acted upon is no part of what came and went before [ms]. Own choice. */
const afreshAfter = 2 * hour;
/** Longest growth that comes and goes [ms]: one that hangs for longer is an episode of its own. Own choice. */
const longestBrief = hour / 2;

/**
 * Joins brief growths that come and go within some hours; one that hangs and a fire signal among them stand apart, and one
 * after a pause that is to be acted upon begins afresh.
 */
function flutter(grown: readonly Suspect[], fires: readonly Suspect[], acts: number): Suspect[] {
  const brief = (s: Suspect): boolean =>
    s.end - s.start <= longestBrief && !fires.some((f) => f.start <= s.end && f.end >= s.start);
  const all: Suspect[] = [];
  for (let k = 0; k < grown.length; ) {
    const first = grown[k] as Suspect;
    let next = k + 1;
    while (next < grown.length && (grown[next] as Suspect).end - first.start <= fluttering) next++;
    if (next - k >= comeAndGo) {
      for (const run of briefTogether(grown.slice(k, next), brief, acts)) {
        const own = run.length === 1 ? run : run.map((s) => ({ ...s, again: false }));
        all.push(...joined(own, () => true));
      }
    } else {
      next = k + 1;
      all.push(first);
    }
    k = next;
  }
  return all;
}

/** Growths in order, parted on either side of each that is not brief. */
function briefTogether(growths: readonly Suspect[], brief: (s: Suspect) => boolean, acts: number): Suspect[][] {
  const runs: Suspect[][] = [];
  let before = Number.NEGATIVE_INFINITY;
  for (const s of growths) {
    const isBrief = brief(s);
    const afresh = s.lost >= acts && s.start - before > afreshAfter;
    if (before > Number.NEGATIVE_INFINITY && isBrief && !afresh) runs.at(-1)?.push(s);
    else runs.push([s]);
    before = isBrief ? s.end : Number.NEGATIVE_INFINITY;
  }
  return runs;
}

/** The parts of a stretch that lie outside of others, from sample to sample. */
function apart(time: Float64Array, stretch: Suspect, others: readonly Suspect[]): Suspect[] {
  const parts: Suspect[] = [];
  let { start } = stretch;
  for (const o of others) {
    if (o.end < start || o.start > stretch.end) continue;
    const before = time[rowAt(time, o.start) - 1] ?? start;
    if (before > start && o.start > start) parts.push({ ...stretch, start, end: before });
    start = time[rowAt(time, o.end + 1)] ?? Number.POSITIVE_INFINITY;
  }
  if (start < stretch.end) parts.push({ ...stretch, start });
  return parts;
}

/** Joins neighbours for which `together` holds: pause between them, length of the longer, end of one, start of next. */
function joined(
  suspects: readonly Suspect[],
  together: (pause: number, length: number, from: number, to: number) => boolean,
): Suspect[] {
  const all: Suspect[] = [];
  for (const s of [...suspects].sort((a, b) => a.start - b.start)) {
    const last = all.at(-1);
    if (
      last !== undefined &&
      s.again !== true &&
      (s.start <= last.end ||
        together(s.start - last.end, Math.max(last.end - last.start, s.end - s.start), last.end, s.start))
    ) {
      last.end = Math.max(last.end, s.end);
      last.fire ||= s.fire;
      last.grown ||= s.grown;
      last.lost = Math.max(last.lost, s.lost);
      last.growth = Math.max(last.growth, s.growth);
      last.clearing = Math.max(last.clearing, s.clearing);
    } else all.push({ ...s });
  }
  return all;
}

/** Loss from which growth is to be acted upon, share of clean air. */
const actsFrom = ({ beam }: View): number => (smokeActShare.value * beam.alarmThreshold) / 100;

function claim(picture: Picture, s: Suspect, dipsAtThatHour: number): Claim {
  const { view } = picture;
  const open = s.end >= view.to - 0.5 * view.interval;
  const act = open || s.fire || s.lost >= actsFrom(view);
  // What set the signal off is all that is lost, whatever of it had been lost before this growth.
  const most = s.fire ? Math.max(s.lost, lossBetween(picture, s.start, s.end)) : s.lost;
  return {
    start: s.start,
    end: s.end,
    confidence: likelihood(s, dipsAtThatHour),
    severity: act ? 'act' : 'watch',
    summary: s.fire
      ? `Obscuration stood past the alarm threshold for the alarm delay (${percent(most)} % at most): a fire signal, to be treated as fire.`
      : s.growth > 0 || !s.dithers
        ? `Loss grew by ${percent(most)} % as smoke may, over ${spell(s.growth)}: treat as fire.`
        : `${percent(most)} % of the light was lost for ${spell(s.end - s.start)}, and the samples spread from then on, as those of smoke that hangs: treat as fire.`,
    evidence: [
      evidence('greatest obscuration', percent(most), '%'),
      evidence('length', (s.end - s.start) / 1000, 's'),
      ...(s.growth > 0 ? [evidence('growth from 10 to 90 %', s.growth / 1000, 's')] : []),
      ...(s.grown && Number.isFinite(s.clearing) ? [evidence('time to clear, at most', s.clearing / 1000, 's')] : []),
      ...(s.grown ? [evidence('dips about this hour on other days, in 30 days', dipsAtThatHour, '')] : []),
    ],
  };
}
