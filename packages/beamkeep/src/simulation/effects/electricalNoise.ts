import { rowAt } from '../../columns/index.js';
import { random } from '../random.js';
import type { Scene } from '../scene.js';
import type { Part, Window } from './part.js';

/** Interference from the supply or the wiring: the spread grows, the level stays. */
export interface ElectricalNoise {
  readonly effect: 'electrical-noise';
  readonly stream: string;
  /** When it is there [ms]; `shifts`: while people work. */
  readonly bursts: 'shifts' | readonly Window[];
  /** Spread that it adds, as a multiple of the beam's own. */
  readonly times: number;
  /** Spikes of either sign, each hour. */
  readonly spikes: number;
  /** Height of a spike, as a rule [share of clean air]. */
  readonly spikeHeight: number;
  /** Whether it grows from nothing over its whole time (a joint that corrodes). */
  readonly grows: boolean;
}

/** What interference does to the reading of a beam whose own noise has a spread of `own` [share of clean air]. */
export function electricalNoise(plan: ElectricalNoise, scene: Scene, own: number): Part<ElectricalNoise> {
  const draw = random(scene.seed, plan.stream);
  const { time, scenario } = scene;
  const light = new Float32Array(time.length);
  const windows: readonly Window[] = plan.bursts === 'shifts' ? scene.shifts : plan.bursts;
  const [begin, end] = [windows[0]?.from ?? 0, windows[windows.length - 1]?.to ?? 0];
  const perSample = (plan.spikes * scenario.intervalSeconds) / 3600;
  for (const { from, to } of windows) {
    for (let i = rowAt(time, from); i < time.length && (time[i] as number) <= to; i++) {
      const grown = plan.grows ? ((time[i] as number) - begin) / Math.max(1, end - begin) : 1;
      let value = own * plan.times * grown * draw.normal();
      if (draw.chance(perSample)) {
        value += (draw.chance(0.5) ? 1 : -1) * plan.spikeHeight * (0.4 + draw.exponential()) * grown;
      }
      light[i] = value;
    }
  }
  return { effect: plan, cause: 'electrical-noise', windows, light };
}
