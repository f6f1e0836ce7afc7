import { firstSmoke, growthHeat } from '../numbers/index.js';
import { type Air, hallAir } from './air.js';
import { flowFactor } from './plume/heskestad.js';

/*
 * How far published laws of a sinking smoke layer lie apart. The zone model (layer.ts) gives a sharp face at z; the
 * tests behind NFPA 92 gave the height at which smoke is first seen, by one line for steady fires and another for
 * growing ones. All three depend on the same group: how much air the plume has taken since ignition,
 *
 *     x = (z/H)^(-2/3) - 1     of the zone model, steady: x = 2/3 K tau; growing: x = 2/5 K 1055^(1/3) tau^(5/3)
 *     K = 0.071 (1 - radiative share)^(1/3) / density
 *
 * so for every face of the zone model the other two heights follow, whatever the fire did until then:
 *
 *     face of the zone model  z/H    0.9    0.8    0.6    0.4
 *     first smoke, steady            0.91   0.68   0.42   0.22
 *     first smoke, growing           1      1      0.52   0.28
 *
 * A real fire is neither steady nor growing for long: the lowest and the highest of the three are the band.
 */

/** Where the lower face of a layer may be. */
export interface LayerSpread {
  /** [m above the fuel], at most the face of the zone model. */
  readonly lowest: number;
  /** [m above the fuel], at least the face of the zone model; the top of the layer: smoke need not be there yet. */
  readonly highest: number;
}

/**
 * How far the face of a smoke layer may lie from where the zone model has it.
 *
 * @param face of the zone model [m above the fuel], more than 0 and at most `top`
 * @param top of the layer [m above the fuel]
 * @param radiativeShare of the fire, 0 to less than 1
 * @returns lowest and highest face; the very face where no layer has formed
 *
 * Holds for floor areas of 0.9 to 14 times the height squared. Below a fifth of the height there are no tests: there
 * the zone model's face is the lowest.
 * Source: NFPA 92, first indication of smoke, as quoted after Klote and Milke; zone model: `layerFilling`.
 * @example layerSpread(6, 10, 0.3) // { lowest: 4.2, highest: 6 }, about
 */
export function layerSpread(face: number, top: number, radiativeShare: number, air: Air = hallAir): LayerSpread {
  if (!(face < top)) return { lowest: face, highest: face };
  const taken = (face / top) ** (-2 / 3) - 1;
  const perTime = (flowFactor(air) * Math.cbrt(1 - radiativeShare)) / air.density;
  const steadyTime = taken / ((2 / 3) * perTime);
  const growingTime = (taken / (0.4 * perTime * Math.cbrt(growthHeat.value))) ** 0.6;
  const { steady, perLog, growing, power, lowest } = firstSmoke;
  const seen = [steady.value - perLog.value * Math.log(steadyTime), growing.value * growingTime ** power.value].map(
    (share) => top * Math.min(1, Math.max(lowest.value, share)),
  );
  return { lowest: Math.min(face, ...seen), highest: Math.max(face, ...seen) };
}
