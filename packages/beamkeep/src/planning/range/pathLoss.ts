import { UsageError } from '../../columns/index.js';
import { geometricLoss } from '../../optics/index.js';

/*
 * What distance alone takes from a beam. The spot grows with distance; whatever misses the reflector or the receiver is
 * lost.
 *
 *     end-to-end   spot = d x divergence, against the receiver
 *
 *     reflective   spot = d x divergence, against the reflector      near: all of it fits, nothing lost
 *                  back: 2 x (spot or reflector, the smaller)        a corner cube sends light back parallel: what came
 *                        + d x spread, against the receiver          through an opening is twice as wide at its source
 *
 * Far away both legs grow with distance and the light falls with its fourth power (12.04 dB for twice the distance);
 * with a reflector larger than the spot with its square (6.02 dB), near by with nothing.
 * Source: derived from the inverse square and CIE S 017:2020, 17-24-103; ITU-R P.1814 for one leg (from memory).
 */

/** The optics of a beam. Figures of the maker: none is assumed. */
export interface BeamOptics {
  /** Full angle of the emitted beam [degrees], more than 0. */
  readonly divergenceDegrees: number;
  /** Of the receiving lens [m], more than 0. */
  readonly receiverMetres: number;
  /** The reflector of a reflective beam; left out for an end-to-end one. */
  readonly reflector?: {
    /** Diameter of the round reflector of the same area [m], more than 0. */
    readonly diameterMetres: number;
    /** Full angle by which it spreads what it sends back [degrees], more than 0. */
    readonly spreadDegrees: number;
  };
}

const milliradians = (degrees: number): number => (degrees * Math.PI * 1000) / 180;

/** Loss because a spot has outgrown an opening [dB]. */
const outgrown = (spot: number, opening: number): number => Math.max(0, 20 * Math.log10(spot / opening));

function refuseUnlessMore(name: string, value: number, unit: string): void {
  if (!(value > 0 && value < Number.POSITIVE_INFINITY)) {
    throw new UsageError(`${name} ${value} ${unit} must be more than 0 and finite`);
  }
}

/**
 * Loss by distance of a well aimed beam in clean air.
 *
 * @param optics of the maker
 * @param distance between the two ends [m], more than 0
 * @returns [dB], 0 or more: 0 where everything that is sent comes to the receiver
 * @throws UsageError for a length or an angle that is not more than 0
 */
export function pathLoss({ divergenceDegrees, receiverMetres, reflector }: BeamOptics, distance: number): number {
  refuseUnlessMore('divergence', divergenceDegrees, 'degrees');
  refuseUnlessMore('receiver', receiverMetres, 'm');
  refuseUnlessMore('distance', distance, 'm');
  const divergence = milliradians(divergenceDegrees);
  if (reflector === undefined) return geometricLoss(distance, divergence, receiverMetres);
  refuseUnlessMore('reflector', reflector.diameterMetres, 'm');
  refuseUnlessMore('spread of the reflector', reflector.spreadDegrees, 'degrees');
  const spot = (distance * divergence) / 1000;
  const back = 2 * Math.min(spot, reflector.diameterMetres) + (distance * milliradians(reflector.spreadDegrees)) / 1000;
  return geometricLoss(distance, divergence, reflector.diameterMetres) + outgrown(back, receiverMetres);
}

/** Whether the spot is larger than what should catch it: the reflector, or the receiver of an end-to-end beam. */
export function overfills({ divergenceDegrees, receiverMetres, reflector }: BeamOptics, distance: number): boolean {
  return (distance * milliradians(divergenceDegrees)) / 1000 > (reflector?.diameterMetres ?? receiverMetres);
}

/** Received level over a span of distances. */
export interface RangeCurve {
  /** [m] */
  readonly distance: Float64Array;
  /** Below the level at the nearest distance [dB]. */
  readonly decibels: Float64Array;
  /** Distance from which the spot overfills the reflector, or the receiver of an end-to-end beam [m]. */
  readonly overfillsFrom: number;
}

/**
 * Received level against distance, in dB below the nearest.
 *
 * @param optics of the maker
 * @param nearest and `farthest` distance [m], more than 0
 * @param points how many, 2 or more
 * @throws UsageError for a span that is none
 */
export function rangeCurve(optics: BeamOptics, nearest: number, farthest: number, points = 100): RangeCurve {
  if (!(farthest > nearest)) throw new UsageError(`farthest ${farthest} m must be more than nearest, ${nearest} m`);
  const first = pathLoss(optics, nearest);
  const distance = Float64Array.from(
    { length: points },
    (_, i) => nearest * (farthest / nearest) ** (i / Math.max(1, points - 1)),
  );
  return {
    distance,
    decibels: distance.map((each) => pathLoss(optics, each) - first),
    overfillsFrom:
      ((optics.reflector?.diameterMetres ?? optics.receiverMetres) * 1000) / milliradians(optics.divergenceDegrees),
  };
}
