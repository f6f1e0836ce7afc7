import { minute, rowAt, type Span } from '../../columns/index.js';
import { changePoints, median, robustSpread } from '../../statistics/index.js';

/** Readings of one beam while it was tested, rows in order of time, none missing. */
export interface TestReadings {
  /** Instants [ms since 1970-01-01 UTC], rising. */
  readonly time: Float64Array;
  /** Received power [any unit proportional to it]. */
  readonly power: Float64Array;
  /** Smallest step that the readings can show [unit of power]; left out: finer than matters. */
  readonly step?: number;
}

/** Rows of the three stretches of a covered test; a clean one may be missing. */
export interface TestStretches {
  readonly before?: Span;
  readonly covered: Span;
  readonly after?: Span;
}

/** Fewest samples that make a stretch. */
export const fewestSamples = 3;

/** Share of the drop from clean to covered within which a reading belongs to either. */
const nearness = 0.1;

/** Most of a clean stretch that is taken, next to the cover: what the light did an hour before tells nothing [ms]. */
const longestClean = 10 * minute;

interface Piece extends Span {
  readonly level: number;
}

/**
 * Finds the covered stretch of a test, and the clean ones before and after it.
 *
 * @returns the stretches, their ragged ends cut off, or why there is none, in words
 *
 * The record is cut where its level jumps. The lowest piece is the covered one, the highest says what clean is, and
 * the pieces between the two (a hand on its way, a cover half on) belong to neither.
 */
export function testStretches(readings: TestReadings): TestStretches | { readonly refusal: string } {
  const { time } = readings;
  const pieces = piecesOf(readings).filter(({ from, to }) => to - from >= fewestSamples);
  const lowest = pieces.reduce<Piece | undefined>(
    (low, piece) => (low && low.level <= piece.level ? low : piece),
    undefined,
  );
  if (lowest === undefined)
    return {
      refusal: `a covered test needs at least ${fewestSamples} samples in each of its stretches: hold it longer`,
    };
  const clean = Math.max(...pieces.map(({ level }) => level));
  const noise = noiseOf(readings);
  const drop = clean - lowest.level;
  if (!(drop > Math.max(6 * noise, 0.02 * Math.abs(clean))))
    return {
      refusal:
        'nothing was covered: the reading stays at one level. Cover the whole reflector (or the receiver) for half a ' +
        'minute, with clean air before and after, and name the time with --from and --to where the log is long',
    };
  const isCovered = ({ level }: Piece) => level <= lowest.level + nearness * drop;
  const covered = joined(pieces, pieces.indexOf(lowest), isCovered);
  const before = cleanOf(
    pieces.filter(({ to }) => to <= covered.from),
    'last',
    lowest.level,
    drop,
  );
  const after = cleanOf(
    pieces.filter(({ from }) => from >= covered.to),
    'first',
    lowest.level,
    drop,
  );
  return {
    covered: trimmed(covered, true, true),
    ...(before && { before: trimmed(lastOf(time, before), before.from > 0, true) }),
    ...(after && { after: trimmed(firstOf(time, after), true, after.to < time.length) }),
  };
}

/** The clean stretch on one side of the cover, the one nearest to it; a level that did not quite return counts too. */
function cleanOf(pieces: readonly Piece[], which: 'first' | 'last', covered: number, drop: number): Span | undefined {
  const highest = Math.max(...pieces.map(({ level }) => level));
  if (!(highest > covered + drop / 2)) return undefined;
  const isClean = ({ level }: Piece) => level >= highest - nearness * drop;
  return joined(pieces, which === 'last' ? pieces.findLastIndex(isClean) : pieces.findIndex(isClean), isClean);
}

/** Spread of a sample about its neighbours [unit of power], which no jump between them moves. */
export function noiseOf({ power, step = 0 }: TestReadings): number {
  const changes = power.subarray(1).map((value, row) => value - (power[row] as number));
  return robustSpread(changes, step) / Math.SQRT2;
}

function extremes(values: Float64Array): [number, number] {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return [low, high];
}

function piecesOf(readings: TestReadings): Piece[] {
  const { power } = readings;
  if (power.length === 0) return [];
  const [low, high] = extremes(power);
  const scale = Math.max(noiseOf(readings), 0.002 * (high - low));
  if (!(scale > 0)) return [{ from: 0, to: power.length, level: power[0] as number }];
  const cuts = changePoints(power, { penalty: 3 * Math.log(power.length + 1), scale });
  const edges = [0, ...cuts, power.length];
  return edges.slice(1).map((to, row) => {
    const from = edges[row] as number;
    return { from, to, level: median(power.subarray(from, to)) };
  });
}

/** The piece at a row with its neighbours of the same kind. */
function joined(pieces: readonly Piece[], row: number, alike: (piece: Piece) => boolean): Span {
  let first = row;
  let last = row;
  while (first > 0 && alike(pieces[first - 1] as Piece)) first--;
  while (last + 1 < pieces.length && alike(pieces[last + 1] as Piece)) last++;
  return { from: (pieces[first] as Piece).from, to: (pieces[last] as Piece).to };
}

const lastOf = (time: Float64Array, { from, to }: Span): Span => ({
  from: Math.max(from, rowAt(time, (time[to - 1] as number) - longestClean)),
  to,
});

const firstOf = (time: Float64Array, { from, to }: Span): Span => ({
  from,
  to: Math.min(to, rowAt(time, (time[from] as number) + longestClean)),
});

/** A stretch without a tenth at each end that borders on another: there the hand still moves. */
function trimmed({ from, to }: Span, start: boolean, end: boolean): Span {
  const rows = to - from;
  const cut = rows <= 2 * fewestSamples ? 0 : Math.max(1, Math.floor(rows / 10));
  return { from: from + (start ? cut : 0), to: to - (end ? cut : 0) };
}
