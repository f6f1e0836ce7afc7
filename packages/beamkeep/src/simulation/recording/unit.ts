import type { BeamPlan } from '../scenario.js';

/** A share of the clean-air reading in the beam's unit, on its steps. */
export function inUnit({ unit, cleanAir, step }: BeamPlan, share: number): number {
  if (Number.isNaN(share)) return Number.NaN;
  const exact = (() => {
    switch (unit) {
      case 'percent':
      case 'counts':
      case 'millivolts':
        return cleanAir * share;
      case 'obscuration':
        return cleanAir + 100 * (1 - share);
      case 'decibels':
        return cleanAir + 10 * Math.log10(Math.max(share, 1e-4));
    }
  })();
  // Counts and millivolts come from a converter that shows nothing below nought.
  const shown = unit === 'counts' || unit === 'millivolts' ? Math.max(0, exact) : exact;
  return Math.round(shown / step) * step;
}

/** One step of the scale at clean air, as a share of the clean-air span. */
export function stepShare({
  unit,
  cleanAir,
  step,
  covered,
}: Pick<BeamPlan, 'unit' | 'cleanAir' | 'step' | 'covered'>): number {
  const share = (() => {
    switch (unit) {
      case 'percent':
      case 'counts':
      case 'millivolts':
        return step / cleanAir;
      case 'obscuration':
        return step / 100;
      case 'decibels':
        return 1 - 10 ** (-step / 10);
    }
  })();
  return share / (1 - covered);
}

/** Decimals that a step needs, at least so many. */
export function decimals(step: number): number {
  for (let places = 0; places < 6; places++) {
    if (Math.abs(Math.round(step * 10 ** places) / 10 ** places - step) < 1e-9) return places;
  }
  return 6;
}
