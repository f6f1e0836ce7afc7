import { hour, minute, type PanelEntry } from '../columns/index.js';
import { median } from '../statistics/index.js';
import { entryKind } from './entryKind.js';
import type { ExpectedSignal } from './expectedSignals.js';

/*
 * Two clocks told apart by what both have seen. Every entry of the panel's list is set against every signal of the
 * same kind and beam that the log leads to; each pair says how far the clocks would stand apart. The true distance is
 * the one on which most pairs agree:
 *
 *     pairs      .  .     .        ||||||  .       .   .
 *     distance  -2 h      0        140 s          1 h
 *
 * Agreement by chance is reckoned with: it grows with the number of pairs and with the distance looked at, so near
 * distances are tried first. A distance on which one entry stands alone is none.
 */

/** How far the panel's clock stands from the log's. */
export interface ClockOffset {
  /** Panel's clock less the log's [ms]: positive where the panel runs ahead. */
  readonly offset: number;
  /** Entries that have their signal at this distance. */
  readonly matched: number;
  /** Entries that could have one: a signal of their kind and beam within reach. */
  readonly of: number;
  /** Largest less smallest distance of the matched [ms]. */
  readonly spread: number;
}

/** Distances that are tried, one after the other [ms]: clocks that run badly, a clock change missed, another zone. */
const reaches = [15 * minute, 3 * hour, 13 * hour] as const;
/** Highest probability of such an agreement by chance. */
const mostChance = 0.01;
/** Most pairs that are weighed: of more, entries are taken evenly. */
const mostPairs = 1_000_000;

interface Pair {
  readonly entry: number;
  readonly signal: number;
  /** [ms] */
  readonly distance: number;
}

/**
 * How far two distances may lie apart and still be one [ms]: a minute, since panels print minutes and clocks drift, or
 * the interval between samples where that is longer.
 */
export const clockTolerance = (intervalSeconds: number): number => Math.max(minute, 1000 * intervalSeconds || 0);

/**
 * The distance between the panel's clock and the log's, from what both have seen.
 *
 * @param entries of the panel's list
 * @param signals that the log leads to, of all beams, in order of time
 * @param tolerance see `clockTolerance` [ms]
 * @returns undefined where the two do not agree on a distance clearly enough
 */
export function clockOffset(
  entries: readonly PanelEntry[],
  signals: readonly ExpectedSignal[],
  tolerance: number,
): ClockOffset | undefined {
  for (const reach of reaches) {
    const pairs = pairsWithin(entries, signals, reach);
    const found = agreement(pairs, tolerance);
    if (found === undefined) continue;
    const { matched, of } = found;
    if (matched < 2 || 2 * matched < of) continue;
    if (byChance(pairs, matched, reach, tolerance) < mostChance) return found;
  }
  return undefined;
}

/** How well a distance that is known by other means fits: the entries that have their signal there. */
export function fitOf(
  offset: number,
  entries: readonly PanelEntry[],
  signals: readonly ExpectedSignal[],
  tolerance: number,
): ClockOffset {
  const shifted = signals.map((signal) => ({ ...signal, time: signal.time + offset }));
  const pairs = pairsWithin(entries, shifted, reaches[0]);
  const distances = matching(pairs, 0, tolerance);
  return { offset, matched: distances.length, of: countOf(pairs, 'entry'), spread: spreadOf(distances) };
}

/** Every entry with every signal of its kind and beam that lies within reach. */
function pairsWithin(
  entries: readonly PanelEntry[],
  signals: readonly ExpectedSignal[],
  reach: number,
): readonly Pair[] {
  const told = entries.flatMap(({ time, beam, what }, entry) => {
    const kind = entryKind(what);
    return kind === 'other' ? [] : [{ entry, time, beam, kind }];
  });
  const order = [...signals.keys()].sort((a, b) => timeOf(signals, a) - timeOf(signals, b));
  const firstWithin = (time: number): number => {
    let [low, high] = [0, order.length];
    while (low < high) {
      const middle = (low + high) >>> 1;
      if (timeOf(signals, order[middle] as number) < time - reach) low = middle + 1;
      else high = middle;
    }
    return low;
  };
  const within = told.map((entry) => ({ ...entry, from: firstWithin(entry.time) }));
  const many = within.reduce((sum, { time, from }) => sum + firstWithin(time + 2 * reach) - from, 0);
  const every = Math.ceil(many / mostPairs) || 1;
  return within.flatMap(({ entry, time, beam, kind, from }, at) => {
    const own: Pair[] = [];
    if (at % every !== 0) return own;
    for (let k = from; k < order.length; k++) {
      const signal = order[k] as number;
      const other = signals[signal] as ExpectedSignal;
      if (other.time > time + reach) break;
      if (other.kind === kind && (beam === undefined || beam === other.beam))
        own.push({ entry, signal, distance: time - other.time });
    }
    return own;
  });
}

const timeOf = (signals: readonly ExpectedSignal[], at: number): number => (signals[at] as ExpectedSignal).time;

const countOf = (pairs: readonly Pair[], of: 'entry' | 'signal'): number => new Set(pairs.map((pair) => pair[of])).size;

const spreadOf = (distances: readonly number[]): number => {
  const sorted = [...distances].sort((a, b) => a - b);
  return (sorted.at(-1) ?? 0) - (sorted[0] ?? 0);
};

/** The distance on which most entries agree, each with a signal of its own. */
function agreement(pairs: readonly Pair[], tolerance: number): ClockOffset | undefined {
  const sorted = [...pairs].sort((a, b) => a.distance - b.distance);
  const entries = new Map<number, number>();
  const signals = new Map<number, number>();
  const count = (counts: Map<number, number>, key: number, by: 1 | -1) => {
    const now = (counts.get(key) ?? 0) + by;
    if (now === 0) counts.delete(key);
    else counts.set(key, now);
  };
  let best = { score: 0, middle: 0, width: 0 };
  let from = 0;
  for (const pair of sorted) {
    count(entries, pair.entry, 1);
    count(signals, pair.signal, 1);
    for (; pair.distance - distanceAt(sorted, from) > 2 * tolerance; from++) {
      count(entries, (sorted[from] as Pair).entry, -1);
      count(signals, (sorted[from] as Pair).signal, -1);
    }
    const score = Math.min(entries.size, signals.size);
    const width = pair.distance - distanceAt(sorted, from);
    const middle = pair.distance - width / 2;
    const closer = width < best.width || (width === best.width && Math.abs(middle) < Math.abs(best.middle));
    if (score > best.score || (score === best.score && closer)) best = { score, middle, width };
  }
  if (best.score === 0) return undefined;
  const about = median(matching(sorted, best.middle, tolerance));
  const matched = matching(sorted, about, tolerance);
  return { offset: median(matched), matched: matched.length, of: countOf(pairs, 'entry'), spread: spreadOf(matched) };
}

const distanceAt = (pairs: readonly Pair[], at: number): number => (pairs[at] as Pair).distance;

/** Distances of the pairs within the tolerance of one, each entry and each signal in one pair at most, nearest first. */
function matching(pairs: readonly Pair[], about: number, tolerance: number): number[] {
  const off = ({ distance }: Pair) => Math.abs(distance - about);
  const near = pairs.filter((pair) => off(pair) <= tolerance).sort((a, b) => off(a) - off(b));
  const entries = new Set<number>();
  const signals = new Set<number>();
  return near.flatMap(({ entry, signal, distance }) => {
    if (entries.has(entry) || signals.has(signal)) return [];
    entries.add(entry);
    signals.add(signal);
    return [distance];
  });
}

/** Probability that so many entries agree somewhere within reach though the clocks have nothing to do with each other. */
function byChance(pairs: readonly Pair[], matched: number, reach: number, tolerance: number): number {
  const perEntry = new Map<number, number>();
  for (const { entry } of pairs) perEntry.set(entry, (perEntry.get(entry) ?? 0) + 1);
  let expected = 0;
  for (const many of perEntry.values()) expected += Math.min(1, (many * tolerance) / reach);
  // The upper tail of Poisson's law, for many entries of which each has a small chance.
  let term = Math.exp(-expected);
  for (let k = 1; k <= matched; k++) term *= expected / k;
  let tail = 0;
  for (let k = matched + 1; term > 1e-12 * tail; k++) {
    tail += term;
    term *= expected / k;
  }
  return Math.max(1, reach / tolerance) * Math.min(1, tail);
}
