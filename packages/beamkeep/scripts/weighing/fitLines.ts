import { type CauseWord, causeWords } from '../../src/diagnosis/index.js';
import { type Beside, nobody } from '../../src/diagnosis/weighing/beside.js';
import { crowding, type Line, logOdds, probability } from '../../src/diagnosis/weighing/weighing.js';

/** One claim that was judged against the truth. */
export interface Example {
  readonly cause: CauseWord;
  /** Name of log and beam. */
  readonly beam: string;
  /** The plain score, 0 to 1. */
  readonly score: number;
  /** How many stretches the cause claims on the beam. */
  readonly alike: number;
  /** What the other beams tell of it. */
  readonly beside: Beside;
  readonly right: boolean;
  /** The claims of one cause on one beam weigh together as the root of their number: sixty of one noisy beam as eight. */
  readonly weight: number;
}

/** A fitted line and how many beams it rests on. */
export interface FittedLine extends Required<Line> {
  readonly beams: number;
}

/** Offset, slope, crowd, shared, alone. */
type Numbers = readonly [offset: number, slope: number, crowd: number, shared: number, alone: number];
const places = [0, 1, 2, 3, 4] as const;

/** Before any example: a score is taken as it stands. */
const identity: Numbers = [0, 1, 0, 0, 0];
/** How far the line common to all causes may lie from that, and the line of a cause from the common one (spreads). */
const commonSpread: Numbers = [3, 1, 2, 2, 2];
const ownSpread: Numbers = [1.5, 0.25, 1, 1, 1];
/** A better score always counts for something, a crowd never for a cause, what another beam shows never against, to stand alone never for it. */
const leastOfAll: Numbers = [-9, 0.3, -9, 0, -9];
const most: Numbers = [9, 9, 0, 9, 0];
/** Smoke that comes again and again is no less smoke. */
const leastOfSmoke: Numbers = [-9, 0.3, 0, 0, 0];

/** Decimals of what is stored: coarse enough that machines agree. */
const stored = (value: number): number => Number(value.toFixed(3)) + 0;

/**
 * Fits a line a cause. Offset and slope are drawn towards a line common to all causes, which matters where examples are
 * few; that one is drawn towards the identity. A crowd counts only against a cause whose own examples show that it does:
 * gaps come in crowds and are gaps all the same.
 */
export function fitLines(examples: readonly Example[]): Record<CauseWord, FittedLine> {
  const common = mostLikely(
    examples.filter(({ cause }) => cause !== 'smoke-like'),
    identity,
    commonSpread,
    leastOfAll,
  );
  const fitted = causeWords.map((cause) => {
    const own = examples.filter((example) => example.cause === cause);
    const [offset, slope, crowd, shared, alone] = ownLine(
      own,
      [common[0], common[1], 0, 0, 0],
      cause === 'smoke-like' ? leastOfSmoke : leastOfAll,
    );
    return [
      cause,
      {
        offset: stored(offset),
        slope: stored(slope),
        crowd: stored(crowd),
        shared: stored(shared),
        alone: stored(alone),
        beams: new Set(own.map(({ beam }) => beam)).size,
      },
    ] as const;
  });
  return Object.fromEntries(fitted) as Record<CauseWord, FittedLine>;
}

/**
 * The numbers of one cause. Where other beams may only doubt it, that is learned last, with the rest held: else to doubt some
 * claims would make the others surer.
 */
function ownLine(own: readonly Example[], middle: Numbers, least: Numbers): Numbers {
  if (own.some(({ beside }) => beside.shared > 0)) return mostLikely(own, middle, ownSpread, least);
  const undoubted = own.map((example) => ({ ...example, beside: nobody }));
  const [offset, slope, crowd] = mostLikely(undoubted, middle, ownSpread, least);
  const held: Numbers = [offset, slope, crowd, 0, 0];
  return mostLikely(own, held, ownSpread, least, [places[4]]);
}

/** The most likely numbers, normal distributions about `middle` taken before: those that are free, one after the other by Newton's step. */
function mostLikely(
  examples: readonly Example[],
  middle: Numbers,
  spread: Numbers,
  least: Numbers,
  free: readonly (typeof places)[number][] = places,
): Numbers {
  const rows = examples.map(({ score, alike, beside, right, weight }) => ({
    x: [1, logOdds(score), crowding(alike), beside.shared, beside.alone] as const,
    right: right ? 1 : 0,
    weight,
  }));
  const found: [number, number, number, number, number] = [...middle];
  for (let sweep = 0, moved = Number.POSITIVE_INFINITY; sweep < 500 && moved > 1e-7; sweep++) {
    moved = 0;
    for (const j of free) {
      let pull = (middle[j] - found[j]) / spread[j] ** 2;
      let stiffness = 1 / spread[j] ** 2;
      for (const { x, right, weight } of rows) {
        const p = probability(x.reduce((sum, value, k) => sum + (found[k] as number) * value, 0));
        pull += weight * (right - p) * x[j];
        stiffness += weight * p * (1 - p) * x[j] ** 2;
      }
      const step = Math.min(1, Math.max(-1, pull / stiffness));
      const next = Math.min(most[j], Math.max(least[j], found[j] + step));
      moved = Math.max(moved, Math.abs(next - found[j]));
      found[j] = next;
    }
  }
  return found;
}
