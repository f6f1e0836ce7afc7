import { type CountedNuisance, fireFromWords, type TradeOffJson, tradeOffCounted } from 'beamkeep/planning';
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
