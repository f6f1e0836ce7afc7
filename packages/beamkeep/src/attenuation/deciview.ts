import { clearestAir } from '../numbers/index.js';
import { refuseNegative } from './refuse.js';

/**
 * Haze on a scale whose steps look alike.
 *
 * @param extinction extinction coefficient of visible light [1/m], natural, 0 or more
 * @returns haze index [deciview]: 0 in the clearest air, 1 for each 10 % more; -Infinity without any; NaN in, NaN out
 * @throws UsageError for a negative extinction
 *
 * Source: Pitchford and Malm, standard visual index: 10 ln(extinction / 0.01 per km).
 * @example deciview(11.0517e-6) // 1
 */
export function deciview(extinction: number): number {
  refuseNegative('extinction', extinction, '1/m');
  return 10 * Math.log(extinction / clearestAir.value);
}
