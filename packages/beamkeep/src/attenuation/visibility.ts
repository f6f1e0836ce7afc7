import { UsageError } from '../columns/index.js';
import { reflectingSign, visibleContrast } from '../numbers/index.js';
import { levelToDecibels } from './reading.js';
import { refuseNegative, refuseUnlessPositive } from './refuse.js';

/*
 * How far one sees. Every form is a constant over the natural extinction of *visible* light: bring what an infrared
 * beam measured to it first (`extinctionAt`), or the answer is too kind.
 */

/**
 * Distance at which a sign can just be read through smoke.
 *
 * @param extinction extinction coefficient of visible light [1/m], natural, 0 or more
 * @param sign visibility times extinction: 3 for a reflecting sign (`reflectingSign`), 8 for one that emits light
 *   (`lightEmittingSign`)
 * @returns visibility [m]; Infinity in clean air; NaN in, NaN out
 * @throws UsageError for a negative extinction or a sign that is not more than 0
 *
 * Source: CIBSE Guide E, eq. 10.7; SFPE Handbook, 5th edition, eq. 50.19 and 50.20; NUREG-1805, eq. 18-1.
 * @example visibility(0.626) // 4.8
 */
export function visibility(extinction: number, sign: number = reflectingSign.value): number {
  refuseNegative('extinction', extinction, '1/m');
  refuseUnlessPositive('sign', sign, '');
  return sign / extinction;
}

function refuseUnlessContrast(contrast: number): void {
  if (!(contrast > 0 && contrast < 1)) throw new UsageError(`contrast is ${contrast}: it must lie between 0 and 1`);
}

/**
 * Distance at which a dark object fades into haze.
 *
 * @param extinction extinction coefficient of visible light [1/m], natural, 0 or more
 * @param contrast least contrast that is seen, between 0 and 1; 0.05 (`visibleContrast`), older texts 0.02
 * @returns visual range [m]; Infinity in clean air; NaN in, NaN out
 * @throws UsageError for a negative extinction or a contrast not between 0 and 1
 *
 * Source: AMS Glossary, visual range: V = -ln(contrast) / extinction.
 * @example visualRange(0.003) // 999
 */
export function visualRange(extinction: number, contrast: number = visibleContrast.value): number {
  refuseNegative('extinction', extinction, '1/m');
  refuseUnlessContrast(contrast);
  return -Math.log(contrast) / extinction;
}

/**
 * Extinction of haze or fog in which one sees so far: the way back from `visualRange`.
 *
 * @param range visual range [m], more than 0; Infinity in clean air
 * @param contrast least contrast that is seen, between 0 and 1
 * @returns extinction coefficient of visible light [1/m], natural; NaN in, NaN out
 * @throws UsageError for a range that is not more than 0 or a contrast not between 0 and 1
 * @example visualRangeToExtinction(1000) // 0.003
 */
export function visualRangeToExtinction(range: number, contrast: number = visibleContrast.value): number {
  if (range <= 0) throw new UsageError(`visual range is ${range} m: it must be more than 0`);
  refuseUnlessContrast(contrast);
  return -Math.log(contrast) / range;
}

/**
 * Path that takes 95 % of the light, from what a meter measured over its baseline.
 *
 * @param transmittance share of the light that arrives, 0 to 1
 * @param baseline path of the meter [m], more than 0
 * @returns meteorological optical range [m]; Infinity for transmittance 1, 0 for 0; NaN in, NaN out
 * @throws UsageError for a transmittance outside 0 to 1 or a baseline that is not more than 0
 *
 * Surest where the transmittance is near 1/e. Source: CIE S 017:2020, 17-31-018.
 * @example opticalRange(0.05, 100) // 100
 */
export function opticalRange(transmittance: number, baseline: number): number {
  if (transmittance < 0 || transmittance > 1) {
    throw new UsageError(`transmittance is ${transmittance}: it must be from 0 to 1`);
  }
  refuseUnlessPositive('baseline', baseline, 'm');
  return (baseline * levelToDecibels(visibleContrast.value)) / levelToDecibels(transmittance);
}
