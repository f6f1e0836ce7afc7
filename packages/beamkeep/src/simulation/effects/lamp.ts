import { minute } from '../../columns/index.js';
import { at } from '../grid.js';
import { random } from '../random.js';
import type { Scene } from '../scene.js';
import type { Part, Window } from './part.js';

/** Lamps that shine into the receiver: on with the shift, or from dusk to dawn within it. */
export interface Lamp {
  readonly effect: 'lamp';
  readonly stream: string;
  /** What they add [share of clean air]. */
  readonly adds: number;
  /** Spread of the samples under them, as a share of that (hum against the sampling). */
  readonly rough: number;
  /** Whether they burn only while it is dark. */
  readonly darkOnly: boolean;
}

/** What lamps do to a beam's receiver. */
export function lamp(plan: Lamp, scene: Scene): Part<Lamp> {
  const draw = random(scene.seed, plan.stream);
  const { time, weather } = scene;
  const light = new Float32Array(time.length);
  const windows: Window[] = scene.shifts.map(({ from, to }) => ({
    from: from - draw.between(0, 20) * minute,
    to: to + draw.between(0, 30) * minute,
  }));
  let i = 0;
  for (const { from, to } of windows) {
    while (i < time.length && (time[i] as number) < from) i++;
    for (; i < time.length && (time[i] as number) <= to; i++) {
      if (plan.darkOnly && at(weather.elevation, time[i] as number) > 2) continue;
      const warm = 1 - 0.4 * Math.exp(-((time[i] as number) - from) / (4 * minute));
      light[i] = plan.adds * warm * (1 + plan.rough * draw.normal());
    }
  }
  return { effect: plan, cause: 'ambient-light', windows, light };
}
