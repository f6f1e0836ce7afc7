import { hour } from '../../columns/index.js';
import type { Scene } from '../scene.js';
import type { Part } from './part.js';

/** The head is knocked or slips: its aim changes at once and stays, until someone aims it again. */
export interface Knock {
  readonly effect: 'knock';
  /** [ms] */
  readonly time: number;
  /** How far it turns, sideways and upwards [half-angles]. */
  readonly turn: readonly [number, number];
  /** Share of the turn that comes later, as the mount settles over some hours, 0 to 0.3. */
  readonly settles: number;
  /** When it is aimed again [ms]; left out: not within the log. */
  readonly aimedAgain?: number;
  /** What is left of the turn after that, 0 to 1. */
  readonly leaves: number;
}

/** What a knock does to a beam. */
export function knock(plan: Knock, { time }: Scene): Part<Knock> {
  const share = Float32Array.from(time, (instant) => {
    if (instant < plan.time) return 0;
    if (plan.aimedAgain !== undefined && instant >= plan.aimedAgain) return plan.leaves;
    return 1 - plan.settles * Math.exp(-(instant - plan.time) / (5 * hour));
  });
  return {
    effect: plan,
    cause: 'misalignment-step',
    windows: [{ from: plan.time, to: (plan.aimedAgain ?? Number.POSITIVE_INFINITY) - 1 }],
    turn: [share.map((value) => value * plan.turn[0]), share.map((value) => value * plan.turn[1])],
  };
}
