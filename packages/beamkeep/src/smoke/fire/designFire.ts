import { UsageError } from '../../columns/index.js';
import { growthHeat } from '../../numbers/index.js';
import { refuseUnlessAbove0, refuseUnlessFrom0 } from '../refuse.js';
import type { Fuel } from './fuel.js';
import { type GrowthClass, growthCoefficient, growthTime } from './growth.js';

/*
 * Design fires: heat and smoke made at every second after ignition. A design fire is a wager, not a forecast: real ones
 * start slowly, flare, starve. What is not known of a fire (past the last point of a measured curve) is NaN.
 *
 *     t-squared     Q = alpha t^2, to a peak and then even      flames that spread
 *     steady        Q at once and for ever                      a burner, a pool, the text-book case
 *     smouldering   smoke doubles again and again, little heat  cables, cushions, cardboard
 *     curve         straight between points of heat release     measured burns, from a file
 */

/** A fire by its heat and its smoke. */
export interface DesignFire {
  /** For people: "t-squared, fast: 1055 kW in 150 s, polyurethane foam". */
  readonly words: string;
  readonly fuel: Fuel;
  /** Heat release rate at so many seconds after ignition [kW]; 0 before it, NaN where it is not known. */
  heat(seconds: number): number;
  /** Smoke made at so many seconds after ignition [kg/s], by the middle figures of the fuel. */
  smoke(seconds: number): number;
  /** Until when the fire is known [s after ignition]; infinity where a law goes on. */
  readonly until: number;
}

const gramsPerKilogram = 1000;

/** Smoke of a heat release rate [kg/s]: y Q / dHc. */
const smokeOf = ({ sootYield, heatOfCombustion }: Fuel, heat: number): number =>
  (sootYield.value * heat) / heatOfCombustion.value / gramsPerKilogram;

function fireOf(words: string, fuel: Fuel, law: (seconds: number) => number, until: number): DesignFire {
  const heat = (seconds: number): number => {
    if (seconds < 0) return 0;
    return seconds <= until ? law(seconds) : Number.NaN;
  };
  return { words: `${words}, ${fuel.words}`, fuel, heat, smoke: (seconds) => smokeOf(fuel, heat(seconds)), until };
}

/** How a t-squared fire grows: a class by one of the two definitions, or its own coefficient [kW/s2]. */
export type Growth = { readonly growth: GrowthClass; readonly definition?: number } | { readonly coefficient: number };

/**
 * A fire that grows with the square of time.
 *
 * @param growth class (to 1055 kW in its growth time unless `definition` says 1000), or coefficient [kW/s2]
 * @param fuel what burns
 * @param peak heat release rate at which it stays [kW], more than 0; left out: it grows for ever
 * @throws UsageError for a coefficient or a peak that is not more than 0
 *
 * Source: NFPA 204, growth times to 1055 kW; Quintiere, eq. 6-3, to 1000 kW.
 * @example squaredFire({ growth: 'fast' }, fuelNamed('wood')).heat(150) // 1055
 */
export function squaredFire(growth: Growth, fuel: Fuel, peak = Number.POSITIVE_INFINITY): DesignFire {
  if (!(peak > 0)) throw new UsageError(`peak ${peak} kW must be more than 0`);
  const definition = 'growth' in growth ? (growth.definition ?? growthHeat.value) : Number.NaN;
  const alpha = 'growth' in growth ? growthCoefficient(growthTime(growth.growth), definition) : growth.coefficient;
  refuseUnlessAbove0('coefficient', alpha, 'kW/s2');
  const named =
    'growth' in growth ? `${growth.growth}: ${definition} kW in ${growthTime(growth.growth)} s` : `${alpha} kW/s2`;
  const end = peak === Number.POSITIVE_INFINITY ? '' : ` up to ${peak} kW`;
  return fireOf(`t-squared, ${named}${end}`, fuel, (s) => Math.min(alpha * s ** 2, peak), Number.POSITIVE_INFINITY);
}

/**
 * A fire of the same size from its first second.
 *
 * @param heat release rate [kW], more than 0
 * @throws UsageError for a heat that is not more than 0
 */
export function steadyFire(heat: number, fuel: Fuel): DesignFire {
  refuseUnlessAbove0('heat release rate', heat, 'kW');
  return fireOf(`steady, ${heat} kW`, fuel, () => heat, Number.POSITIVE_INFINITY);
}

/** How a smouldering fire grows. */
export interface Smoulder {
  /** Smoke made in its first second [g/s], more than 0. */
  readonly firstGramsPerSecond: number;
  /** [s] */
  readonly doublingSeconds: number;
  /** Smoke at which it stays [g/s]. */
  readonly mostGramsPerSecond: number;
}

/**
 * A fire whose smoke doubles again and again, with little heat behind it.
 *
 * Measured chairs doubled in 116 to 617 s (`smoulderDoubling`). Not speed but doubling tells it from dirt and mist.
 *
 * @throws UsageError for a quantity that is not more than 0, or a greatest rate below the first
 * @example smoulderingFire({ firstGramsPerSecond: 0.001, doublingSeconds: 198, mostGramsPerSecond: 0.5 }, fuelNamed('smouldering'))
 */
export function smoulderingFire(
  { firstGramsPerSecond: first, doublingSeconds, mostGramsPerSecond: most }: Smoulder,
  fuel: Fuel,
): DesignFire {
  refuseUnlessAbove0('first smoke', first, 'g/s');
  refuseUnlessAbove0('doubling time', doublingSeconds, 's');
  if (!(most >= first && most < Number.POSITIVE_INFINITY)) {
    throw new UsageError(`greatest smoke ${most} g/s must be finite and not less than the first, ${first} g/s`);
  }
  const heatPerGram = fuel.heatOfCombustion.value / fuel.sootYield.value;
  const doublings = Math.log2(most / first);
  return fireOf(
    `smouldering, ${first} g/s of smoke doubling in ${doublingSeconds} s to ${most} g/s`,
    fuel,
    (s) => heatPerGram * first * 2 ** Math.min(s / doublingSeconds, doublings),
    Number.POSITIVE_INFINITY,
  );
}

/** A point of a heat release curve: seconds after ignition, and kW. */
export type HeatPoint = readonly [seconds: number, heat: number];

/**
 * A fire by points of its heat release, straight between them; not known after the last.
 *
 * @param points at least two, seconds rising, heat [kW] 0 or more
 * @throws UsageError naming the first point that is wrong
 */
export function curveFire(points: readonly HeatPoint[], fuel: Fuel, name = 'curve'): DesignFire {
  if (points.length < 2) throw new UsageError(`${name}: a heat release curve needs two points at least`);
  points.forEach(([seconds, heat], i) => {
    const before = points[i - 1]?.[0] ?? Number.NEGATIVE_INFINITY;
    if (!(seconds > before) || !Number.isFinite(seconds)) {
      throw new UsageError(`${name}: point ${i + 1} is at ${seconds} s, which does not come after ${before} s`);
    }
    refuseUnlessFrom0(`${name}: point ${i + 1}: heat release rate`, heat, 'kW');
  });
  const [lastSeconds] = points[points.length - 1] as HeatPoint;
  return fireOf(`${name}, ${points.length} points to ${lastSeconds} s`, fuel, (s) => between(points, s), lastSeconds);
}

function between(points: readonly HeatPoint[], seconds: number): number {
  const next = points.findIndex(([at]) => at >= seconds);
  const [to, heatTo] = points[next] as HeatPoint;
  if (next === 0) return to === seconds ? heatTo : 0;
  const [from, heatFrom] = points[next - 1] as HeatPoint;
  return heatFrom + ((seconds - from) / (to - from)) * (heatTo - heatFrom);
}

/** Heat that rises with the smoke [kW]: what does not leave as radiation. */
export const convective = ({ radiativeShare }: Fuel, heat: number): number => (1 - radiativeShare) * heat;
