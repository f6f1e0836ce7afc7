import {
  type CountedNuisance,
  fireFromWords,
  type TradeOffJson,
  tradeOffCounted,
  usualDelays,
  usualThresholds,
} from 'beamkeep/planning';
import type { Site } from 'beamkeep/site';

/** Hall and fires of a trade-off, as typed and read into numbers; metres, seconds, kelvin. */
export interface TradeOffHall {
  readonly ceiling: number;
  readonly area: number;
  /** Distance between beams: the fire stands at most half of it aside. */
  readonly spacing: number;
  readonly gradient: number;
  readonly roofWarmer: number;
  readonly diameter: number;
  /** By their short names. */
  readonly fires: readonly string[];
}

/** How long a fire is watched [s]. */
const watched = 1800;

/** Thresholds and delays that are tried: the usual ones, and those that the beams of a site have now. */
export function axesOf({ beams }: Site): { readonly thresholds: number[]; readonly delays: number[] } {
  const joined = (usual: readonly number[], own: readonly number[]): number[] =>
    [...new Set([...usual, ...own])].sort((a, b) => a - b);
  return {
    thresholds: joined(
      usualThresholds,
      beams.map(({ alarmThreshold }) => alarmThreshold),
    ),
    delays: joined(
      usualDelays,
      beams.map(({ alarmDelay }) => alarmDelay),
    ),
  };
}

/**
 * Both costs of every setting of a beam, for a nuisance that was counted before.
 *
 * @throws UsageError for a hall or a fire that cannot be
 */
export function tradeOffOf(
  counted: CountedNuisance,
  site: Site,
  beam: string,
  { ceiling, area, spacing, gradient, roofWarmer, diameter, fires }: TradeOffHall,
): TradeOffJson {
  return tradeOffCounted(counted, site, {
    beam,
    hall: { ceiling, area, gradient, roofRise: roofWarmer },
    places: { nearest: 0, usual: spacing / 4, farthest: spacing / 2 },
    fires: fires.map((name) => {
      const fire = fireFromWords(name);
      return { fire, diameter, seconds: Math.min(watched, Math.floor(fire.until)) };
    }),
  });
}
