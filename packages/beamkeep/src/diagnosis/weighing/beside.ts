import { minute, type Stretch } from '../../columns/index.js';
import type { Cause, Claim } from '../cause.js';

/*
 * What the other beams of a site tell of a claim. Dust, mist, heat and the supply reach several beams of a hall at the same
 * times; a knock reaches one. So of a cause that comes over the hall a claim gains where another beam shows the same then, and
 * loses where others watched and show nothing of it. Dirt is of the hall's air as well, but has no times of its own: that two
 * beams were soiling in the same months tells little. That the others stayed clean tells more: a slow loss of one beam alone
 * is less likely dirt.
 */

/** What is claimed of one beam. */
export interface ClaimedBeam {
  /** First and last sample of its record [ms]; NaN where there is none. */
  readonly from: number;
  readonly to: number;
  /** One entry a cause, in the same order on all beams. */
  readonly claimed: readonly {
    readonly cause: Pick<Cause, 'otherBeams'>;
    readonly claims: readonly TimedClaim[];
  }[];
}

type TimedClaim = Pick<Claim, 'start' | 'end' | 'episodes' | 'confidence'>;

/** What other beams tell of a claim. */
export interface Beside {
  /** How clearly another beam shows the same at the same times, 0 to 1; 0 of dirt. */
  readonly shared: number;
  /** How far it stands alone among beams that watched, 0 to 1; 0 where none did. */
  readonly alone: number;
}

/** Of a beam that no other stands beside, and of a cause of which the others tell nothing. */
export const nobody: Beside = { shared: 0, alone: 0 };

/** How far apart times on two beams may lie and be the same [ms]: air takes its time across a hall. Own choice. */
const sameTime = 30 * minute;

/** A time at which a cause is claimed to have been at work, and how clearly. */
interface Claimed extends Stretch {
  readonly score: number;
}

/**
 * What the other beams of a log tell of the claims of each.
 *
 * @param beams all beams of the log
 * @returns by beam, by cause, by claim
 */
export function besides(beams: readonly ClaimedBeam[]): Beside[][][] {
  const times = beams.map(({ claimed }) =>
    claimed.map(({ claims }) => claims.flatMap(timesOf).sort((a, b) => a.start - b.start)),
  );
  return beams.map(({ claimed }, own) =>
    claimed.map(({ cause: { otherBeams }, claims }, row) =>
      claims.map((claim) => {
        const others = [...beams.keys()].filter((k) => k !== own && watched(beams[k], claim));
        if (otherBeams === 'tell nothing' || others.length === 0) return nobody;
        if (otherBeams === 'show it too') {
          const ours = timesOf(claim);
          const shared = Math.max(...others.map((k) => agreement(ours, times[k]?.[row] ?? [])));
          return { shared, alone: 1 - shared };
        }
        return { shared: 0, alone: 1 - Math.max(...others.map((k) => dirtOf(beams[k], claim))) };
      }),
    ),
  );
}

/** Whether a beam was watched at some time of a stretch. */
const watched = (beam: ClaimedBeam | undefined, { start, end }: Stretch): boolean =>
  beam !== undefined && beam.from <= end && beam.to >= start;

/** How clearly a beam was soiling at some time of a stretch, 0 to 1. */
const dirtOf = (beam: ClaimedBeam | undefined, { start, end }: Stretch): number =>
  Math.max(
    0,
    ...(beam?.claimed ?? []).flatMap(({ cause, claims }) =>
      cause.otherBeams === 'doubt it if clean'
        ? claims.filter((c) => c.start <= end && c.end >= start).map((c) => c.confidence)
        : [],
    ),
  );

const timesOf = ({ start, end, episodes = [[start, end]], confidence }: TimedClaim): Claimed[] =>
  episodes.map(([first, last]) => ({ start: first, end: last, score: confidence }));

/** Mean, over some times, of the best score that another beam has at each of them; both in order of their start. */
function agreement(ours: readonly Stretch[], theirs: readonly Claimed[]): number {
  let first = 0;
  let sum = 0;
  for (const { start, end } of ours) {
    while ((theirs[first]?.end ?? Number.POSITIVE_INFINITY) + sameTime < start) first++;
    let best = 0;
    for (let k = first; (theirs[k]?.start ?? Number.POSITIVE_INFINITY) - sameTime <= end; k++)
      best = Math.max(best, (theirs[k] as Claimed).score);
    sum += best;
  }
  return sum / ours.length;
}
