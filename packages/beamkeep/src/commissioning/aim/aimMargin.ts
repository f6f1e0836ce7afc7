import { percentToDecibels } from '../../attenuation/index.js';
import { halfPowerLoss } from '../../numbers/index.js';
import { displacementOfAngle, type Estimate, type Lobe, type LobeFit } from '../../optics/index.js';
import type { Beam } from '../../site/index.js';
import { estimated } from './estimated.js';

/*
 * How far may a head turn before its own movement raises an alarm? Clean air is what it read where it was left, so
 *
 *     loss at the edge = loss where it was left + loss of the threshold
 *
 * In half-angles off the peak, losses are 3.01 r^power dB: on one axis the edges stand r1 to either side of the peak,
 * and the head r0 off it; the near edge is r1 - r0 away, outwards. On two axes the edge is an ellipse.
 *
 *        edge        peak   left     edge
 *     ----|-----------|------|--------|----
 *         <---------- r1 ----------- >     margin: the shortest way out
 *                            <--------->
 */

/** The margin before one threshold. */
export interface AimMargin {
  /** Obscuration at which it ends, as the equipment sees it [%]. */
  readonly threshold: number;
  /** Turn of the head in the worst direction [degrees]; Infinity where no turn ever reads so much. */
  readonly degrees: Estimate;
  /** The same as a displacement at the far end [mm]. */
  readonly millimetres: Estimate;
  /** The margin of a head on the peak [degrees]: what re-aiming would make of it. */
  readonly degreesOnPeak: number;
}

/** Directions in which the shortest way out is sought, over two axes. */
const directions = 720;

/** Off the peak, one an axis [half-angles]. */
const offAxes = ({ centre, halfAngle }: Lobe, at: readonly number[]): number[] =>
  at.map((angle, k) => (angle - (centre[k] as number)) / (halfAngle[k] as number));

/** Turn of the head before a true loss is reached, the shortest way [unit of the angles]. */
function shortestTurn(lobe: Lobe, at: readonly number[], lossDecibels: number): number {
  if (!Number.isFinite(lossDecibels)) return Number.POSITIVE_INFINITY;
  const off = offAxes(lobe, at);
  const start = Math.hypot(...off);
  const edge = (start ** lobe.power + lossDecibels / halfPowerLoss.value) ** (1 / lobe.power);
  if (off.length === 1) return (edge - start) * (lobe.halfAngle[0] as number);
  let least = Number.POSITIVE_INFINITY;
  for (let direction = 0; direction < directions; direction++) {
    const angle = (2 * Math.PI * direction) / directions;
    const step = [Math.cos(angle), Math.sin(angle)].map((part, k) => part / (lobe.halfAngle[k] as number));
    const a = step.reduce((sum, part) => sum + part * part, 0);
    const b = step.reduce((sum, part, k) => sum + part * (off[k] as number), 0);
    least = Math.min(least, (Math.sqrt(b * b + a * (edge ** 2 - start ** 2)) - b) / a);
  }
  return least;
}

/** True loss at which equipment that sees a residue reads a threshold [dB]; Infinity where it never does. */
const trueLoss = (threshold: number, residue: number): number =>
  percentToDecibels(Math.min(threshold / (1 - residue), 100));

/**
 * The margin of an aim before a threshold.
 *
 * @param fit of the aim scan [degrees]
 * @param at where the head was left, one an axis [degrees]; the peak when left out
 * @param threshold obscuration [%]
 * @param residue share of the clean reading that stays when the beam is gone, 0 where the equipment takes it off
 * @param separation between the two ends [m]
 */
export function aimMargin(
  fit: LobeFit,
  at: readonly number[] | undefined,
  threshold: number,
  residue: number,
  { separation }: Pick<Beam, 'separation'>,
): AimMargin {
  const loss = trueLoss(threshold, residue);
  const degrees = estimated(fit, (lobe) => shortestTurn(lobe, at ?? lobe.centre, loss));
  const far = (angle: number) => (Number.isFinite(angle) ? displacementOfAngle(angle, separation) : angle);
  return {
    threshold,
    degrees,
    millimetres: { value: far(degrees.value), low: far(degrees.low), high: far(degrees.high) },
    degreesOnPeak: shortestTurn(fit.lobe, fit.lobe.centre, loss),
  };
}
