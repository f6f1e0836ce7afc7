import { gravity, usualAir } from '../numbers/index.js';

/** The air of a hall before the fire. */
export interface Air {
  /** [K] */
  readonly temperature: number;
  /** [kg/m3] */
  readonly density: number;
  /** [kJ/(kg K)] */
  readonly specificHeat: number;
  /** [m/s2] */
  readonly gravity: number;
}

/** Air at 20 degC. */
export const hallAir: Air = {
  temperature: usualAir.temperature.value,
  density: usualAir.density.value,
  specificHeat: usualAir.specificHeat.value,
  gravity: gravity.value,
};

/** Density of the same air when warmer by so many kelvin [kg/m3], at the same pressure. */
export const densityWarmer = (air: Air, rise: number): number =>
  (air.density * air.temperature) / (air.temperature + rise);

/** (T / (g cp^2 rho^2))^(1/3), the group in which every law of a plume's temperature holds the air. */
export const temperatureGroup = ({ temperature, density, specificHeat, gravity: g }: Air): number =>
  Math.cbrt(temperature / (g * specificHeat ** 2 * density ** 2));

/** (g rho^2 / (cp T))^(1/3), the group in which every law of a plume's mass flow holds the air. */
export const flowGroup = ({ temperature, density, specificHeat, gravity: g }: Air): number =>
  Math.cbrt((g * density ** 2) / (specificHeat * temperature));
