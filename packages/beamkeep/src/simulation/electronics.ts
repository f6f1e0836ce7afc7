import { day, hour } from '../columns/index.js';
import { at, rank } from './grid.js';
import { random } from './random.js';
import type { Scene } from './scene.js';

/** What the equipment itself does to a reading, in good health. */
export interface Electronics {
  /** Spread of single samples [share of clean air]. */
  readonly noise: number;
  /** Spread of a slow wander under it [share of clean air]. */
  readonly wander: number;
  /** How long the wander takes [s]. */
  readonly wanderSeconds: number;
  /** Share of samples three times as far out as the rest, 0 to 0.1: tails heavier than a normal's. */
  readonly tails: number;
  /** Growth of the spread with heat [1/K]. */
  readonly heatNoise: number;
  /** Spread about noon over that at night: hot air shimmers in the beam; 1 for none. */
  readonly shimmer: number;
  /** Loss by ageing [%/year]. */
  readonly ageing: number;
  /** Change of the level with heat [%/K]. */
  readonly temperatureCoefficient: number;
  /** What it is off by when switched on at the log's start [%]. */
  readonly warmUp: number;
  /** How long it takes to settle [h]. */
  readonly warmUpHours: number;
}

/** Electronics that do nothing but hiss. */
export const quietElectronics = (noise: number): Electronics => ({
  noise,
  wander: 0,
  wanderSeconds: 600,
  tails: 0,
  heatNoise: 0,
  shimmer: 1,
  ageing: 0,
  temperatureCoefficient: 0,
  warmUp: 0,
  warmUpHours: 1,
});

/** Drift [share of the level] and noise [share of clean air] of one beam's electronics, sample by sample. */
export function hiss(plan: Electronics, scene: Scene, id: string): { drift: Float32Array; noise: Float32Array } {
  const draw = random(scene.seed, id, 'electronics');
  const { time, roof, structure, weather } = scene;
  const start = time[0] ?? 0;
  const usual = rank(structure.values, 0.5);
  const drift = new Float32Array(time.length);
  const noise = new Float32Array(time.length);
  const mean = scene.scenario.recording.sampling === 'mean' ? 0.5 : 1;
  let wander = draw.normal();
  let last = start;
  for (let i = 0; i < time.length; i++) {
    const instant = time[i] as number;
    const warmth = at(structure, instant) - usual;
    const keep = Math.exp(-(instant - last) / (1000 * plan.wanderSeconds));
    last = instant;
    wander = keep * wander + Math.sqrt(1 - keep * keep) * draw.normal();
    const hot = Math.max(0, at(roof, instant) - at(weather.air, instant)) / 25;
    const spread =
      plan.noise * mean * Math.max(0.3, 1 + plan.heatNoise * warmth) * (1 + (plan.shimmer - 1) * Math.min(1, hot));
    const tail = plan.tails > 0 && draw.chance(plan.tails) ? 3 : 1;
    noise[i] = spread * tail * draw.normal() + plan.wander * wander;
    drift[i] =
      (-plan.ageing * (instant - start)) / (100 * 365.25 * day) +
      (plan.temperatureCoefficient * warmth) / 100 +
      (plan.warmUp / 100) * Math.exp(-(instant - start) / (plan.warmUpHours * hour));
  }
  return { drift, noise };
}
