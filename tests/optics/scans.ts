import type { LobeFit } from '../../packages/beamkeep/src/optics/aim/fitLobe.js';
import { type Lobe, lobeLevel } from '../../packages/beamkeep/src/optics/aim/lobeModel.js';

/* Aim scans to fit a lobe to: a lobe of 100, half-angle 0.5 about 0.12, where nothing else is said. */

/** Turns of the head, evenly apart. */
export const degrees = (from: number, to: number, step: number) =>
  Float64Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + i * step);

/** A lobe. */
export const lobe = (changes: Partial<Lobe> = {}): Lobe => ({
  peak: 100,
  floor: 0,
  centre: [0.12],
  halfAngle: [0.5],
  power: 2,
  ...changes,
});

/** A scan of a lobe, with noise of so much. */
export function scan(true_: Lobe, angles: Float64Array, spread: number, noise: () => number): Float64Array {
  return lobeLevel(true_, [angles]).map((level) => level + spread * noise());
}

/** What a fit doubts. */
export const kinds = (fit: LobeFit) => fit.flags.map(({ kind }) => kind);
/** Turns to three half-angles on either side. */
export const wide = degrees(-1.5, 1.5, 0.1);
