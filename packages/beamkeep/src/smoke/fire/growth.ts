import { UsageError } from '../../columns/index.js';
import { growthHeat, growthHeatRound, growthTimes } from '../../numbers/index.js';
import { refuseUnlessAbove0 } from '../refuse.js';

/** How quickly a fire grows, by the four names in use. */
export const growthClasses = ['slow', 'medium', 'fast', 'ultra-fast'] as const;
/** One of `growthClasses`. */
export type GrowthClass = (typeof growthClasses)[number];

/** Heat release rate that a fire reaches in its growth time [kW]: the two definitions in use. */
export const growthDefinitions = [growthHeat.value, growthHeatRound.value] as const;

const seconds: Readonly<Record<GrowthClass, number>> = {
  slow: growthTimes.slow.value,
  medium: growthTimes.medium.value,
  fast: growthTimes.fast.value,
  'ultra-fast': growthTimes.ultraFast.value,
};

/** Growth time of a class [s]. */
export const growthTime = (growth: GrowthClass): number => seconds[growth];

/**
 * Coefficient of a fire that grows with the square of time.
 *
 * @param growthSeconds time in which it reaches the heat of the definition [s], more than 0
 * @param heat of the definition [kW]: 1055 (1000 Btu/s, NFPA 204) or 1000 (Quintiere, eq. 6-3); they differ by 5.5 %
 * @returns alpha of Q = alpha t^2 [kW/s2]
 * @throws UsageError for a time or a heat that is not more than 0
 * @example growthCoefficient(150, 1055) // 0.046889
 */
export function growthCoefficient(growthSeconds: number, heat: number = growthHeat.value): number {
  refuseUnlessAbove0('growth time', growthSeconds, 's');
  refuseUnlessAbove0('heat release rate', heat, 'kW');
  return heat / growthSeconds ** 2;
}

/** The class of this name. */
export function growthNamed(name: string): GrowthClass {
  const found = growthClasses.find((each) => each === name);
  if (found === undefined) throw new UsageError(`growth "${name}" is not known: use ${growthClasses.join(', ')}`);
  return found;
}
