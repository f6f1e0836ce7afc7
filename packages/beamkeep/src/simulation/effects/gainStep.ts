import type { Scene } from '../scene.js';
import type { Part } from './part.js';
import { passed } from './passed.js';

/** The equipment's gain is changed, or its reading set back to 100 %: the level steps, the light does not. */
export interface GainStep {
  readonly effect: 'gain-step';
  /** [ms] */
  readonly time: number;
  /** Change of the gain [dB], positive upwards; `renormalised`: whatever brings the reading back to clean air. */
  readonly decibels: number | 'renormalised';
}

/** What a step of the gain does to the reading of a beam whose slow loss at that instant is `lossThen` [dB]. */
export function gainStep(plan: GainStep, scene: Scene, lossThen: number): Part<GainStep> {
  const since = passed(scene);
  const decibels = plan.decibels === 'renormalised' ? lossThen : plan.decibels;
  return {
    effect: plan,
    cause: 'cleaned',
    windows: [{ from: plan.time, to: plan.time }],
    gain: Float32Array.from(scene.time, (instant) => decibels * since(instant, plan.time)),
  };
}
