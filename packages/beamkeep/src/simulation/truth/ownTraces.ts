import type { BeamPlan } from '../scenario.js';
import type { TraceOfCause } from './truthFile.js';
import { brief } from './viewed.js';

/** What the equipment itself does, in good health: named, so that nobody takes a finding of it for right. */
export function ownTraces({ electronics }: BeamPlan): TraceOfCause[] {
  const { ageing, temperatureCoefficient, warmUp, shimmer, tails, heatNoise } = electronics;
  const traces: TraceOfCause[] = [];
  const add = (cause: TraceOfCause['cause'], magnitude: number, unit: string, why: string, near: boolean) =>
    traces.push({ cause, magnitude: brief(magnitude), unit, why, near });
  if (ageing !== 0) add('contamination', ageing, '% a year', 'ageing of the electronics', false);
  if (temperatureCoefficient !== 0) {
    add(
      'building-movement',
      temperatureCoefficient,
      '% a kelvin',
      'temperature of the electronics',
      Math.abs(temperatureCoefficient) > 0.04,
    );
  }
  if (warmUp !== 0) add('ambient-light', warmUp, '%', 'warming up of the electronics', false);
  if (shimmer > 1.02) {
    add('ambient-light', shimmer, 'times the noise', 'hot air in the light around noon', shimmer >= 1.6);
    add('electrical-noise', shimmer, 'times', 'hot air in the light around noon', shimmer >= 1.6);
  }
  if (tails > 0 || heatNoise > 0) {
    const times = 1 + 20 * heatNoise;
    add('electrical-noise', times, 'times', 'noise that changes with the heat, or has long tails', times >= 1.6);
  }
  return traces;
}
