import type { Scene } from '../scene.js';
import type { Part } from './part.js';

/*
 * Aim that creeps away: a bracket that sags, a screw that works loose. The turn grows with a power of time; the loss
 * goes with its square, so it accelerates, unless the head began far down one flank.
 */

/** Creeping aim. */
export interface Creep {
  readonly effect: 'creep';
  /** When it begins [ms]. */
  readonly from: number;
  /** When it has turned by `turn` [ms]; it goes on at the same law after. */
  readonly to: number;
  /** How far it turns by then, sideways and upwards [half-angles]. */
  readonly turn: readonly [number, number];
  /** Power of time with which the turn grows: 1 is steady, 2 speeds up, 0.7 slows down. */
  readonly power: number;
  /** When it is aimed again [ms]; left out: not within the log. */
  readonly aimedAgain?: number;
}

/** What creeping aim does to a beam. */
export function creep(plan: Creep, { time }: Scene): Part<Creep> {
  const { from, to, power, aimedAgain = Number.POSITIVE_INFINITY } = plan;
  const share = Float32Array.from(time, (instant) =>
    instant <= from || instant >= aimedAgain ? 0 : ((instant - from) / (to - from)) ** power,
  );
  return {
    effect: plan,
    cause: 'misalignment-drift',
    windows: [{ from, to: aimedAgain - 1 }],
    turn: [share.map((value) => value * plan.turn[0]), share.map((value) => value * plan.turn[1])],
  };
}
