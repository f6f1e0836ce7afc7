import { mccaffrey } from '../../numbers/index.js';
import { type Air, hallAir } from '../air.js';
import { refuseUnlessAbove0 } from '../refuse.js';

/** A plume's axis by McCaffrey's laws. */
export interface AxisByRegion {
  readonly region: 'flame' | 'intermittent' | 'plume';
  /** z/Q^(2/5), by which the regions are told apart [m/kW^(2/5)]. */
  readonly scaledHeight: number;
  /** Temperature rise [K]. */
  readonly rise: number;
  /** [m/s] */
  readonly speed: number;
}

/**
 * Axis of a plume by McCaffrey: a second witness beside Heskestad's laws, from buoyant flames of natural gas.
 *
 * @param heat release rate, radiation included [kW], more than 0
 * @param height above the burner [m], more than 0
 * @throws UsageError for an argument that is not more than 0
 *
 * Source: Enclosure Fire Dynamics, eq. 4.29 and 4.30. The burner's size does not enter: not for wide, weak fires.
 * @example axisByRegion(1690, 2.5).region // 'intermittent'
 */
export function axisByRegion(heat: number, height: number, air: Air = hallAir): AxisByRegion {
  refuseUnlessAbove0('heat release rate', heat, 'kW');
  refuseUnlessAbove0('height', height, 'm');
  const { flame, intermittent, plume, rise } = mccaffrey;
  const scaledHeight = height / heat ** 0.4;
  const region =
    scaledHeight < flame.until.value ? 'flame' : scaledHeight < intermittent.until.value ? 'intermittent' : 'plume';
  const { factor, power } = { flame, intermittent, plume }[region];
  return {
    region,
    scaledHeight,
    rise:
      (factor.value / (rise.value * Math.sqrt(2 * air.gravity))) ** 2 *
      scaledHeight ** (2 * power.value - 1) *
      air.temperature, // eq. 4.29
    speed: factor.value * scaledHeight ** power.value * heat ** 0.2, // eq. 4.30
  };
}
