import { britishThermalUnit, foot, riseTime as milke } from '../../numbers/index.js';
import { refuseUnlessAbove0 } from '../refuse.js';

/**
 * Time until the smoke under the ceiling of a high space is warmer by so much.
 *
 * @param heat release rate of a steady fire [kW], more than 0
 * @param ceiling height above the fuel [m], more than 0
 * @param rise temperature rise [K], more than 0
 * @returns [s]
 *
 * Source: Milke, as in the NUREG-1805 spreadsheet, ch. 11; drawn in Btu/s, ft and degF, which is where it is worked.
 * @example riseTime(1000, 3.9624, 10) // 0.26
 */
export function riseTime(heat: number, ceiling: number, rise: number): number {
  refuseUnlessAbove0('heat release rate', heat, 'kW');
  refuseUnlessAbove0('ceiling height', ceiling, 'm');
  refuseUnlessAbove0('temperature rise', rise, 'K');
  const btu = heat / britishThermalUnit.value;
  const feet = ceiling / foot.value;
  const y = (rise * 1.8 * feet ** (5 / 3)) / btu ** (2 / 3);
  const x = milke.square.value * y ** 2 + milke.sixth.value * y ** 6;
  return (x * feet ** (4 / 3)) / Math.cbrt(btu);
}
