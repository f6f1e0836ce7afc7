import { leastWarmth } from '../numbers/index.js';
import { type Air, hallAir } from './air.js';
import { convective, type DesignFire } from './fire/designFire.js';
import { type Place, plumeBeside } from './plume/besideWalls.js';
import { axisRise } from './plume/heskestad.js';
import { virtualOrigin } from './plume/origin.js';

/*
 * The smoke layer of a closed hall: all that the plume carries up stays under the roof, evenly over the whole floor
 * area, and the layer's lower face sinks by what the plume takes from the clear air below it.
 *
 *     d(face)/dt = -(plume mass flow at the face) / (air density x floor area)
 *     d(smoke)/dt = what the fire makes
 *
 * A fire too weak to warm its plume by a kelvin at the top lifts no layer: draughts carry its smoke, which then counts
 * as mixed through the whole hall. Vents, wind, doors, sprinklers and cooling are left out; so is the time in which
 * smoke spreads over the hall, so in wide halls the layer comes later at first, and thicker, near the fire.
 */

/** The hall in which smoke gathers. */
export interface Hall {
  /** Floor area under one roof [m2], more than 0. */
  readonly area: number;
  /** Ceiling above the fuel [m], more than 0. */
  readonly ceiling: number;
}

/** Gathered smoke at one second. */
export interface SmokeLayer {
  /** Height of its lower face above the fuel [m]; the height of its top where there is none yet. */
  readonly face: number;
  /** Height of its top [m]: the ceiling, or where warm air stops the plume. */
  readonly top: number;
  /** Smoke in the air of it [kg/m3]; 0 where there is none yet. */
  readonly concentration: number;
  /** Smoke that draughts have mixed through the whole hall [kg/m3]. */
  readonly mixed: number;
}

/** Whether a fire warms its plume by a kelvin at a height: a weaker one is carried off by draughts. */
export function lifts(heat: number, fire: DesignFire, diameter: number, height: number, air: Air = hallAir): boolean {
  if (!(heat > 0)) return false;
  return axisRise(convective(fire.fuel, heat), height - virtualOrigin(heat, diameter), air) >= leastWarmth.value;
}

/** Clear height left above the fuel, below which no plume is reckoned [m]: a layer does not sink into its own fire. */
const floorLeft = 0.1;

/** Share of its height by which a face may sink in one step. */
const finest = 0.01;

/**
 * How smoke gathers in a hall, second by second.
 *
 * @param fire design fire
 * @param diameter of the fire [m]
 * @param hall floor area and ceiling
 * @param seconds how long, in whole seconds
 * @param options air, place of the fire, and the height at which the smoke spreads at a second where it is not the
 *   ceiling (`plumeTop`); smoke already above that height is left where it is
 * @returns a layer for every whole second from 0 on
 *
 * Zone model of one layer, integrated in steps of a hundredth of the face's height: with a steady point plume it meets
 * the closed form of Zukoski, z = (H^(-2/3) + 2/3 C Q^(1/3) t/(rho A))^(-3/2), within 1 % (tested).
 */
export function layerFilling(
  fire: DesignFire,
  diameter: number,
  { area, ceiling }: Hall,
  seconds: number,
  {
    air = hallAir,
    place = 'free',
    spreadsAt = () => ceiling,
  }: { readonly air?: Air; readonly place?: Place; readonly spreadsAt?: (second: number) => number } = {},
): SmokeLayer[] {
  const layers: SmokeLayer[] = [];
  const volume = area * ceiling;
  let top = 0;
  let face = 0;
  let layered = 0;
  let mixed = 0;
  for (let second = 0; second <= seconds; second++) {
    const heat = fire.heat(second);
    const rises = Math.min(ceiling, spreadsAt(second));
    const forms = rises > 0 && lifts(heat, fire, diameter, rises, air);
    if (forms && top === 0) face = rises;
    if (forms) top = Math.max(top, rises);
    layers.push({
      face,
      top,
      concentration: face < top ? layered / (area * (top - face)) : 0,
      mixed: mixed / volume,
    });
    if (!(heat > 0)) continue;
    if (forms) {
      const source = { heat, radiativeShare: fire.fuel.radiativeShare, diameter };
      face = sunk(face, (height) => plumeBeside(place, source, height, air).massFlow / (air.density * area));
      layered += fire.smoke(second);
    } else mixed += fire.smoke(second);
  }
  return layers;
}

/** Where a face stands after a second in which it sinks at so many m/s; in steps of at most a hundredth of its height. */
function sunk(from: number, speed: (face: number) => number): number {
  let face = from;
  for (let left = 1; left > 0 && face > floorLeft; ) {
    const falls = speed(face);
    const step = Math.min(left, (finest * face) / falls);
    face -= falls * step;
    left -= step;
  }
  return Math.max(face, floorLeft);
}
