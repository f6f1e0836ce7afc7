import { hour } from '../columns/index.js';

/** What goes on longer than this is no event of a day [ms]. */
export const longest = 36 * hour;

/** What the joining of moments and findings needs to know of a finding. */
export interface Told {
  readonly cause: string;
  /** First and last sample [ms]. */
  readonly start: number;
  readonly end: number;
  readonly confidence: number;
  /** One sentence for a person. */
  readonly summary: string;
  /** Of a recurring cause: first and last sample of each time it came [ms]. */
  readonly episodes?: readonly (readonly [number, number])[];
}

/** A finding at a stretch of time. */
export interface Cover<T extends Told> {
  readonly finding: T;
  /** First and last sample of the time it came that lies there [ms]; of one without episodes, of the whole. */
  readonly start: number;
  readonly end: number;
  /** How far from the stretch it lies [ms]; 0 where it covers a part of it. */
  readonly away: number;
  /** Whether something that goes on for long begins or ends there. */
  readonly edge: boolean;
}

/**
 * The findings at a stretch of time, the one that says most first: what covers a part of the stretch before what is
 * near it, what may be smoke before all else, what is sure and short, or begins or ends there, before what is doubtful
 * or goes on for months.
 *
 * @param findings of one beam
 * @param from first instant of the stretch [ms]
 * @param to last instant, `from` for a moment [ms]
 * @param reach how far from the stretch a finding may lie [ms]
 */
export function covering<T extends Told>(
  findings: readonly T[],
  from: number,
  to: number,
  reach: number,
): readonly Cover<T>[] {
  return findings
    .flatMap((finding): Cover<T>[] => {
      const nearest = nearestTime(finding, from, to);
      if (nearest === undefined || nearest.away > reach) return [];
      const { start, end } = nearest;
      const lies = (instant: number) => instant >= from - reach && instant <= to + reach;
      return [{ finding, ...nearest, edge: end - start > longest && (lies(start) || lies(end)) }];
    })
    .sort(
      (a, b) =>
        Number(isNear(a)) - Number(isNear(b)) || Number(isSmoke(b)) - Number(isSmoke(a)) || weight(b) - weight(a),
    );
}

/** The time it came that lies nearest to a stretch; of one without episodes the whole. */
function nearestTime(
  { start, end, episodes }: Told,
  from: number,
  to: number,
): Omit<Cover<Told>, 'finding' | 'edge'> | undefined {
  const away = (first: number, last: number) => Math.max(0, first - to, from - last);
  if (episodes === undefined) return { start, end, away: away(start, end) };
  let nearest: readonly [number, number] | undefined;
  for (const episode of episodes) if (nearest === undefined || away(...episode) < away(...nearest)) nearest = episode;
  return nearest === undefined ? undefined : { start: nearest[0], end: nearest[1], away: away(...nearest) };
}

/** Near, rather than there. */
const isNear = ({ away, edge }: Cover<Told>): boolean => away > 0 && !edge;

const isSmoke = ({ finding }: Cover<Told>): boolean => finding.cause === 'smoke-like';

/** Sure and short weighs more: a factor of ten in length costs as much as a third to a half of the confidence. */
const weight = ({ finding, start, end, away, edge }: Cover<Told>): number =>
  finding.confidence / (1 + 0.5 * Math.log10(1 + (away + (edge ? 0 : end - start)) / hour));
