import { hour, rowAt } from '../../columns/index.js';
import { random } from '../random.js';
import type { Scene } from '../scene.js';
import type { Part, Window } from './part.js';

/*
 * The mount shakes while plant runs: a turn of the head at one frequency that wanders a little. On the flank of the
 * lobe the level swings at that frequency, on its peak at twice that. A slow logger sees the alias; one that takes the
 * mean of each interval sees next to nothing.
 */

/** Vibration of the mount. */
export interface Vibration {
  readonly effect: 'vibration';
  readonly stream: string;
  /** [Hz] */
  readonly frequency: number;
  /** Turn from the middle to one end, sideways and upwards [half-angles]. */
  readonly turn: readonly [number, number];
  /** Spread of the frequency, as a share of it. */
  readonly wander: number;
  /** When plant runs: `shifts`, or stretches of its own [ms]. */
  readonly runs: 'shifts' | readonly Window[];
  /** Share of the running time that the plant really turns, 0 to 1. */
  readonly duty: number;
}

/** What vibration does to a beam. */
export function vibration(plan: Vibration, scene: Scene): Part<Vibration> {
  const draw = random(scene.seed, plan.stream);
  const { time } = scene;
  const swing = new Float32Array(time.length);
  const windows: Window[] = [];
  for (const run of plan.runs === 'shifts' ? scene.shifts : plan.runs) windows.push(...turns(run, plan.duty, draw));
  const spread = plan.wander * plan.frequency;
  for (const { from, to } of windows) {
    let phase = draw.between(0, 2 * Math.PI);
    let off = spread * draw.normal();
    let last = from;
    for (let i = rowAt(time, from); i < time.length && (time[i] as number) <= to; i++) {
      const seconds = ((time[i] as number) - last) / 1000;
      last = time[i] as number;
      // The frequency wanders over about five minutes; the phase keeps count of every turn.
      const keep = Math.exp(-seconds / 300);
      off = keep * off + Math.sqrt(1 - keep * keep) * spread * draw.normal();
      phase += 2 * Math.PI * (plan.frequency + off) * seconds;
      const averaged = scene.scenario.recording.sampling === 'mean' ? 1 / (1 + plan.frequency * seconds * Math.PI) : 1;
      swing[i] = Math.sin(phase) * averaged;
    }
  }
  return {
    effect: plan,
    cause: 'vibration',
    windows,
    turn: [swing.map((value) => value * plan.turn[0]), swing.map((value) => value * plan.turn[1])],
  };
}

/** Stretches within a run in which the plant really turns. */
function turns({ from, to }: Window, duty: number, draw: ReturnType<typeof random>): Window[] {
  if (duty >= 1) return [{ from, to }];
  const found: Window[] = [];
  const mean = Math.min(1.5 * hour, (to - from) / 3);
  let now = from + draw.exponential() * mean * (1 - duty) * 0.5;
  while (now < to) {
    const until = Math.min(to, now + mean * duty * draw.between(0.4, 1.6));
    found.push({ from: now, to: until });
    now = until + mean * (1 - duty) * draw.between(0.4, 1.6);
  }
  return found;
}
