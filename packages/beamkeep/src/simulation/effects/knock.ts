import { hour } from '../../columns/index.js';
import type { Scene } from '../scene.js';
import type { Part } from './part.js';
import { passed } from './passed.js';

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
export function knock(plan: Knock, scene: Scene): Part<Knock> {
  const since = passed(scene);
  const share = Float32Array.from(scene.time, (instant) => {
    const settled = 1 - plan.settles * Math.exp(-Math.max(0, instant - plan.time) / (5 * hour));
    const again = plan.aimedAgain === undefined ? 0 : since(instant, plan.aimedAgain);
    return settled * since(instant, plan.time) * (1 - again) + plan.leaves * again;
  });
  return {
    effect: plan,
    cause: 'misalignment-step',
    windows: [{ from: plan.time, to: (plan.aimedAgain ?? Number.POSITIVE_INFINITY) - 1 }],
    turn: [share.map((value) => value * plan.turn[0]), share.map((value) => value * plan.turn[1])],
  };
}
