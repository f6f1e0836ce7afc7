import { quantile } from '../../statistics/index.js';
import type { CauseWord } from '../finding.js';
import type { BeamStanding, StandingFinding } from './beamStanding.js';

/*
 * Two standings of one beam, day against day. Every day after is compared with every day before: the middle of these
 * differences is the change, and four in five of them lie within its band. Days follow one another in weather and dirt,
 * so nothing is taken to be independent, and a change counts as clear only when the band leaves zero out.
 *
 *     before  . : . : .            a day's loss
 *     after           . . : .
 *     change  = median of (after - before) over all pairs (Hodges and Lehmann 1963, from memory)
 *     band    = from the tenth to the ninetieth percentile of the same pairs
 */

/** A measure before and after. */
export interface Change {
  /** Median day, each. */
  readonly before: number;
  readonly after: number;
  /** After less before, and the band that holds four pairs of days in five. */
  readonly change: number;
  readonly low: number;
  readonly high: number;
  /** Whether the band leaves zero out, and the change is worth a word. */
  readonly clear: boolean;
}

/**
 * What became of a cause. `stayed`, `new`; `gone`: it came so often before that it should have come again by now;
 * `unseen`: not there after, but the days are too few to tell, or it is smoke, which no record can tell away.
 */
export type FindingFate = 'stayed' | 'new' | 'gone' | 'unseen';

/** A cause before and after. */
export interface ComparedFinding {
  readonly cause: CauseWord;
  readonly fate: FindingFate;
  readonly before: StandingFinding | null;
  readonly after: StandingFinding | null;
}

/** A beam before and after. */
export interface ComparedBeam {
  readonly id: string;
  /** Usable days. */
  readonly daysBefore: number;
  readonly daysAfter: number;
  /** Whether a step of the level has cut the days before, or after, short. */
  readonly steppedBefore: boolean;
  readonly steppedAfter: boolean;
  /** Loss of a day, its median [dB]. */
  readonly loss: Change;
  /** What is left to the alarm threshold at the daily low [dB]. */
  readonly margin: Change;
  /** Daily swing [dB]. */
  readonly swing: Change;
  /** Daily swing for a kelvin of the structure's daily range [dB/K]; NaN where it is not logged on both sides. */
  readonly swingPerKelvin: Change;
  /** Spread of single samples [% of clean air], and after over before. */
  readonly noise: { readonly before: number; readonly after: number; readonly ratio: number };
  readonly aim: { readonly before: BeamStanding['aim']; readonly after: BeamStanding['aim'] };
  readonly findings: readonly ComparedFinding[];
}

/** Least change of a loss that is worth a word [dB]: about a hundredth of the light, what optics lose from day to day. */
const leastDecibels = 0.05;

/** How many times a cause should have come for its absence to tell: with 3, chance leaves one in twenty (Poisson). */
const shouldHaveCome = 3;

/** Causes of one moment, which belong to one log alone. */
const moments: readonly CauseWord[] = ['cleaned'];

/**
 * What changed on a beam.
 *
 * @param before standing at the end of the log before
 * @param after standing at the begin of the log after, of the same beam
 * @returns changes that are NaN, and not clear, where one side holds no day
 */
export function comparedBeam(before: BeamStanding, after: BeamStanding): ComparedBeam {
  const margins = (of: BeamStanding): number[] => of.byDay.low.map((low) => of.alarmDecibels - low);
  const perKelvin = ({ byDay: { swing, warmth } }: BeamStanding): number[] =>
    swing.map((each, i) => each / Math.max(warmth[i] ?? Number.NaN, 1)).filter((each) => !Number.isNaN(each));
  return {
    id: after.id,
    daysBefore: before.byDay.start.length,
    daysAfter: after.byDay.start.length,
    steppedBefore: before.stepped,
    steppedAfter: after.stepped,
    loss: changeOf(before.byDay.loss, after.byDay.loss, leastDecibels),
    margin: changeOf(margins(before), margins(after), leastDecibels),
    swing: changeOf(before.byDay.swing, after.byDay.swing, leastDecibels),
    swingPerKelvin: changeOf(perKelvin(before), perKelvin(after)),
    noise: { before: before.noise, after: after.noise, ratio: after.noise / before.noise },
    aim: { before: before.aim, after: after.aim },
    findings: fatesOf(before, after),
  };
}

/**
 * Days after against days before.
 *
 * @param before one value a day, none missing
 * @param after the same
 * @param least smallest change that can be clear, in the same unit
 * @example changeOf([1, 1.2, 1.1], [0.4, 0.5]).clear // true
 */
export function changeOf(before: readonly number[], after: readonly number[], least = 0): Change {
  const pairs = Float64Array.from(after.flatMap((late) => before.map((early) => late - early)));
  const middle = (values: readonly number[]): number => quantile(Float64Array.from(values), 0.5);
  if (pairs.length === 0) {
    const nan = Number.NaN;
    return { before: middle(before), after: middle(after), change: nan, low: nan, high: nan, clear: false };
  }
  const [low, change, high] = [quantile(pairs, 0.1), quantile(pairs, 0.5), quantile(pairs, 0.9)];
  return {
    before: middle(before),
    after: middle(after),
    change,
    low,
    high,
    clear: (low > 0 || high < 0) && Math.abs(change) >= least,
  };
}

function fatesOf(before: BeamStanding, after: BeamStanding): ComparedFinding[] {
  const words = new Set([...before.findings, ...after.findings].map(({ cause }) => cause));
  const share = after.byDay.start.length / before.byDay.start.length;
  return [...words]
    .filter((cause) => !moments.includes(cause))
    .map((cause) => {
      const early = before.findings.find((one) => one.cause === cause) ?? null;
      const late = after.findings.find((one) => one.cause === cause) ?? null;
      return { cause, before: early, after: late, fate: fateOf(early, late, share) };
    });
}

function fateOf(before: StandingFinding | null, after: StandingFinding | null, share: number): FindingFate {
  if (after !== null) return before === null ? 'new' : 'stayed';
  if (before === null || before.cause === 'smoke-like') return 'unseen';
  return before.times * share >= shouldHaveCome ? 'gone' : 'unseen';
}
