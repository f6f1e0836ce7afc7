import type { Scene } from '../scene.js';

/**
 * How much of what a sample stands for lies after an instant, 0 to 1: all or nothing where it is a reading of its moment;
 * where it is a mean over the interval before it, a share.
 */
export function passed({ scenario }: Pick<Scene, 'scenario'>): (sample: number, instant: number) => number {
  if (scenario.recording.sampling !== 'mean') return (sample, instant) => (sample >= instant ? 1 : 0);
  const length = 1000 * scenario.intervalSeconds;
  return (sample, instant) => Math.min(1, Math.max(0, (sample - instant) / length));
}
