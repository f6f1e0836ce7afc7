import { zoneModelJet as zone } from '../../numbers/index.js';
import { type Air, hallAir } from '../air.js';
import { refuseUnlessAbove0, refuseUnlessFrom0 } from '../refuse.js';

/** Factor of the outer temperature law that joins it to the inner one at the turn: (0.225 + 0.27 0.2)^(4/3) 6.3. */
export const zoneModelJoin = (farther: number): number =>
  (zone.riseConstant.value + zone.riseRadius.value * farther) ** (4 / 3);

/**
 * The ceiling jet as the zone model has it: a second witness beside `ceilingJet`.
 *
 * @param convectiveHeat [kW], more than 0
 * @param ceiling height above the fuel [m], more than 0
 * @param radius distance from the axis [m], 0 or more
 * @returns temperature rise [K] and speed [m/s]
 *
 * Source: CFAST Technical Reference Guide, Ceiling Jet.
 */
export function zoneModelJet(
  convectiveHeat: number,
  ceiling: number,
  radius: number,
  air: Air = hallAir,
): { rise: number; speed: number } {
  refuseUnlessAbove0('heat release rate', convectiveHeat, 'kW');
  refuseUnlessAbove0('ceiling height', ceiling, 'm');
  refuseUnlessFrom0('radius', radius, 'm');
  const { temperature, density, specificHeat, gravity } = air;
  const fall = Math.sqrt(gravity * ceiling);
  const scaled = convectiveHeat / (density * specificHeat * temperature * fall * ceiling ** 2);
  const far = radius / ceiling;
  return {
    rise: temperature * scaled ** (2 / 3) * (far <= zone.riseTurn.value ? zone.riseNear.value : 1 / zoneModelJoin(far)),
    speed:
      fall *
      Math.cbrt(scaled) *
      (far <= zone.speedTurn.value ? zone.speedNear.value : zone.speedFar.value * far ** zone.speedPower.value),
  };
}
