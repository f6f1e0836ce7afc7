import { minute, rowAt } from '../../columns/index.js';
import { random } from '../random.js';
import type { Scene } from '../scene.js';
import type { Part, Window } from './part.js';

/** The structure gives under a crane, a lift or a heavy door, in working hours. */
export interface LoadMovement {
  readonly effect: 'load-movement';
  readonly stream: string;
  /** Turn under full load, sideways and upwards [half-angles]. */
  readonly turn: readonly [number, number];
  /** How long a load stays, as a rule [min]. */
  readonly stays: number;
  /** Share of the shift under load, 0 to 1. */
  readonly busy: number;
  /** How long a load takes to come and go [s]. */
  readonly ramp: number;
}

/** What loads on the structure do to a beam. */
export function loadMovement(plan: LoadMovement, scene: Scene): Part<LoadMovement> {
  const draw = random(scene.seed, plan.stream);
  const { time } = scene;
  const share = new Float32Array(time.length);
  const windows: Window[] = [];
  for (const shift of scene.shifts) {
    let now = shift.from + draw.exponential() * plan.stays * minute * (1 / plan.busy - 1);
    windows.push({ from: shift.from, to: shift.to });
    while (now < shift.to) {
      const until = Math.min(now + draw.exponential() * plan.stays * minute, shift.to);
      const weight = draw.between(0.5, 1);
      for (let i = rowAt(time, now); i < time.length && (time[i] as number) <= until; i++) {
        const edge = Math.min((time[i] as number) - now, until - (time[i] as number)) / (plan.ramp * 1000);
        share[i] = weight * Math.min(1, edge);
      }
      now = until + draw.exponential() * plan.stays * minute * (1 / plan.busy - 1);
    }
  }
  return {
    effect: plan,
    cause: 'building-movement',
    windows,
    turn: [share.map((value) => value * plan.turn[0]), share.map((value) => value * plan.turn[1])],
  };
}
