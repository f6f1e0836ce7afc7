import { pointPlumeFlow, pointPlumeRise } from '../../numbers/index.js';
import { type Air, flowGroup, hallAir, temperatureGroup } from '../air.js';
import { refuseUnlessAbove0 } from '../refuse.js';

/** The plume of an ideal point source. */
export interface PointPlume {
  /** [kg/s] */
  readonly massFlow: number;
  /** Temperature rise, even across the plume [K]. */
  readonly rise: number;
}

/**
 * The plume of a point of heat: the simplest law, for a check by hand; for fires of some size take `plumeAt`.
 *
 * @param heat convective heat release rate [kW], more than 0
 * @param height [m], more than 0
 * @throws UsageError for an argument that is not more than 0
 *
 * Source: Enclosure Fire Dynamics, eq. 4.19 and 4.20.
 * @example pointPlume(70, 2).massFlow // 0.95
 */
export function pointPlume(heat: number, height: number, air: Air = hallAir): PointPlume {
  refuseUnlessAbove0('heat release rate', heat, 'kW');
  refuseUnlessAbove0('height', height, 'm');
  return {
    massFlow: pointPlumeFlow.value * flowGroup(air) * Math.cbrt(heat) * height ** (5 / 3), // eq. 4.19
    rise: pointPlumeRise.value * temperatureGroup(air) * heat ** (2 / 3) * height ** (-5 / 3), // eq. 4.20
  };
}
