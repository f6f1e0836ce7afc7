import { rowAt } from '../../columns/index.js';
import { random } from '../random.js';
import type { Scene } from '../scene.js';
import type { Part } from './part.js';

/** One time that something stands in the path. */
export interface Standing {
  /** [ms] */
  readonly from: number;
  /** [ms]; beyond the log's end when it is still there */
  readonly to: number;
  /** Share of the light that it takes, 0 to 1. */
  readonly covers: number;
  /** How long it takes to come in and to go [s], 0 to 2. */
  readonly edge: number;
}

/** An object in the path: a lift, a gantry, a banner, someone on a ladder. */
export interface Block {
  readonly effect: 'block';
  readonly stream: string;
  readonly standings: readonly Standing[];
  /** Spread of the light that it leaves, as a share of what it takes (it hangs and turns a little). */
  readonly restless: number;
}

/** What objects in the path do to a beam. */
export function block(plan: Block, scene: Scene): Part<Block> {
  const draw = random(scene.seed, plan.stream);
  const { time, scenario } = scene;
  const mean = scenario.recording.sampling === 'mean' ? 1000 * scenario.intervalSeconds : 0;
  const loss = new Float32Array(time.length);
  for (const standing of plan.standings) {
    const { from, to, covers } = standing;
    for (let i = rowAt(time, from); i < time.length && (time[i] as number) <= to + mean; i++) {
      const inside = mean === 0 ? insideAt(standing, time[i] as number) : insideOver(standing, time[i] as number, mean);
      const taken = Math.min(0.9999, covers * inside * (1 + plan.restless * draw.normal()));
      loss[i] = (loss[i] as number) - 10 * Math.log10(1 - Math.max(0, taken));
    }
  }
  return { effect: plan, cause: 'obstruction', windows: plan.standings, loss };
}

/** How far an object stands in the path at an instant, 0 to 1. */
function insideAt({ from, to, edge }: Standing, instant: number): number {
  return edge === 0 ? 1 : Math.min(1, Math.min(instant - from, to - instant) / (edge * 1000));
}

/** The mean of that over the time before an instant [ms]. */
function insideOver({ from, to, edge }: Standing, instant: number, length: number): number {
  const ramp = edge * 1000;
  // What has come in until then, of an edge that begins then: its square, then its length.
  const since = (begin: number, then: number): number => {
    const passed = Math.max(0, then - begin);
    return passed < ramp ? passed ** 2 / (2 * ramp) : passed - ramp / 2;
  };
  const until = (then: number): number => since(from, then) - since(to - ramp, then);
  return Math.min(1, Math.max(0, (until(instant) - until(instant - length)) / length));
}
