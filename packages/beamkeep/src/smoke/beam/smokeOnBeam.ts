import { crossings, type Layout } from '../../attenuation/index.js';
import { UsageError } from '../../columns/index.js';
import { warmRoofDepth } from '../../numbers/index.js';
import { type Air, hallAir } from '../air.js';
import { riseHeight, warmestRoof } from '../ceiling/stratification.js';
import { transportLag } from '../ceiling/transportLag.js';
import { convective, type DesignFire } from '../fire/designFire.js';
import { layerFilling, type SmokeLayer } from '../layer.js';
import { type Place, plumeBeside } from '../plume/besideWalls.js';
import { refuseUnlessAbove0, refuseUnlessFrom0 } from '../refuse.js';
import { jetOpticalDepth } from './jetLoss.js';
import { plumeDepth } from './plumeLoss.js';

/*
 * From a fire to a beam, second by second. What the fire makes in a second rises, spreads and is late by the transport
 * lag; what arrives is reckoned as of a steady fire of the size it had then. The beam sees the thickest of three:
 *
 *     plume   the column above the fire, where the beam passes through it or near
 *     jet     the thin layer that runs out under the ceiling from above the fire
 *     layer   the smoke that has gathered under the whole roof
 *
 * The greatest, not the sum: they are the same smoke at three stages. Where warm air stops the plume below the roof,
 * there is no jet, and the layer hangs at that height until the fire has grown.
 */

/** Everything about a fire, a hall and a beam. Heights are above the fuel. */
export interface SmokeScene {
  readonly fire: DesignFire;
  /** Of the fire [m], more than 0. */
  readonly diameter: number;
  /** Whether the fire stands free, at a wall or in a corner; free where left out. */
  readonly place?: Place;
  /** Ceiling above the fuel, where the beam runs [m], more than 0. */
  readonly ceiling: number;
  /** Floor area under one roof [m2], more than 0; infinite: no layer gathers. */
  readonly area: number;
  readonly air?: Air;
  /** How much warmer the air grows for every metre of height [K/m], 0 or more. */
  readonly gradient?: number;
  /** How much warmer the air right under the roof is than at the fuel [K], 0 or more. */
  readonly roofRise?: number;
  readonly beam: SceneBeam;
  /** Mass-specific extinction of the smoke at the beam's wavelength [m2/kg] (`specificExtinction`). */
  readonly specificExtinction: number;
}

/** A level beam in a scene. */
export interface SceneBeam {
  readonly layout: Layout;
  /** Distance between the two ends [m], more than 0. */
  readonly separation: number;
  /** Above the fuel [m], more than 0 and at most the ceiling. */
  readonly height: number;
  /** Least distance from the axis of the fire, in plan [m], 0 or more. */
  readonly aside: number;
  /** Where along the beam the fire stands, as a share of the separation; the middle where left out. */
  readonly along?: number;
}

/** What a beam sees of a fire. Columns of equal length, one row a second from 0 on. */
export interface SmokeCurve {
  /** After ignition [s]. */
  readonly seconds: Float64Array;
  /** Heat release rate of the fire [kW]. */
  readonly heat: Float64Array;
  /** Loss of the beam [dB]; NaN once the fire is not known any more. */
  readonly decibels: Float64Array;
  /** Which of the three it was: 0 none, 1 plume, 2 jet, 3 layer. */
  readonly from: Uint8Array;
}

/** Names of the three, by the number in `SmokeCurve.from`. */
export const smokeStages = ['none', 'plume', 'jet', 'layer'] as const;

/** How high the plume of a fire rises in this scene [m above the fuel]. */
export function plumeTop({ ceiling, gradient = 0, roofRise = 0 }: SmokeScene, convectiveHeat: number): number {
  if (!(convectiveHeat > 0)) return 0;
  const stops = gradient > 0 ? riseHeight(convectiveHeat, gradient) : Number.POSITIVE_INFINITY;
  const enters = roofRise === 0 || warmestRoof(convectiveHeat, ceiling) >= roofRise;
  return Math.min(stops, enters ? ceiling : ceiling * (1 - warmRoofDepth.value));
}

/**
 * What a beam sees of a fire, from ignition on.
 *
 * @param scene fire, hall, air and beam
 * @param seconds how long [s], whole and more than 0
 * @returns one row a second
 * @throws UsageError for a scene that cannot be
 *
 * Sources: the laws used are named with `plumeAt`, `ceilingJet`, `transportLag`, `riseHeight` and `layerFilling`.
 * What is left out: `leftOut` of the smoke room, to be printed beside every result.
 */
export function smokeOnBeam(scene: SmokeScene, seconds: number): SmokeCurve {
  checkScene(scene, seconds);
  const { fire, beam } = scene;
  const rows = seconds + 1;
  const curve = {
    seconds: Float64Array.from({ length: rows }, (_, i) => i),
    heat: Float64Array.from({ length: rows }, (_, i) => fire.heat(i)),
    decibels: new Float64Array(rows),
    from: new Uint8Array(rows),
  };
  const times = crossings(beam.layout);
  const layers = gathered(scene, seconds);
  const direct = arrivals(scene, seconds);
  for (let i = 0; i < rows; i++) {
    const rising = direct[i] as Arrival;
    const spread = layerDepth(layers[i], scene);
    const depth = Number.isNaN(curve.heat[i]) ? Number.NaN : Math.max(rising.depth, spread);
    curve.decibels[i] = (10 / Math.LN10) * times * depth;
    curve.from[i] = !(depth > 0) ? 0 : spread >= rising.depth ? 3 : rising.stage;
  }
  return curve;
}

interface Arrival {
  readonly depth: number;
  readonly stage: 1 | 2;
}

/** Smoke on its way, and the seconds that it takes. */
interface Parcel extends Arrival {
  readonly lag: number;
}

const nothing: Arrival = { depth: 0, stage: 1 };

/** What has come up from the fire by every second: the latest smoke that has arrived by then. */
function arrivals(scene: SmokeScene, seconds: number): Arrival[] {
  const arrived: Arrival[] = Array.from({ length: seconds + 1 }, () => nothing);
  const parcels = parcelsOf(scene, seconds);
  let settled = seconds + 1; // smoke of a growing fire overtakes what left before it: what is overtaken does not count
  for (let left = seconds; left >= 0; left--) {
    const { lag, ...arrival } = parcels[left] as Parcel;
    const at = Math.ceil(left + lag);
    for (let i = at; i < settled; i++) arrived[i] = arrival;
    settled = Math.min(settled, at);
  }
  return arrived;
}

/** What leaves the fire in every second. Where the fire is out, clear air follows as slowly as its last smoke. */
function parcelsOf(scene: SmokeScene, seconds: number): Parcel[] {
  let lag = Number.POSITIVE_INFINITY;
  return Array.from({ length: seconds + 1 }, (_, second) => {
    const heat = scene.fire.heat(second);
    if (!(heat > 0)) return { ...nothing, lag };
    const sent = parcel(scene, second, heat);
    lag = sent.lag;
    return sent;
  });
}

/** What the smoke of one second does to the beam, and how late it is. */
function parcel(scene: SmokeScene, second: number, heat: number): Parcel {
  const { fire, diameter, place = 'free', ceiling, air = hallAir, beam, specificExtinction } = scene;
  const convectiveHeat = convective(fire.fuel, heat);
  const smokeRate = fire.smoke(second);
  const top = plumeTop(scene, convectiveHeat);
  const plume =
    beam.height <= top
      ? plumeDepth(
          plumeBeside(place, { heat, radiativeShare: fire.fuel.radiativeShare, diameter }, beam.height, air),
          smokeRate,
          specificExtinction,
          beam.aside,
          air,
        )
      : 0;
  const { along = 0.5, separation } = beam;
  const jet =
    top >= ceiling
      ? jetOpticalDepth(
          { convectiveHeat, smokeRate },
          ceiling,
          {
            below: ceiling - beam.height,
            aside: beam.aside,
            ends: [along * separation, (1 - along) * separation],
          },
          specificExtinction,
          air,
        )
      : 0;
  if (jet > plume) {
    const { rising, outward } = transportLag(heat, ceiling, beam.aside);
    return { depth: jet, stage: 2, lag: rising + outward };
  }
  return { depth: plume, stage: 1, lag: transportLag(heat, beam.height, 0).rising };
}

function gathered(scene: SmokeScene, seconds: number): readonly SmokeLayer[] {
  const { fire, diameter, ceiling, area, air = hallAir, place = 'free' } = scene;
  if (area === Number.POSITIVE_INFINITY) return [];
  return layerFilling(fire, diameter, { area, ceiling }, seconds, {
    air,
    place,
    spreadsAt: (second) => plumeTop(scene, convective(fire.fuel, fire.heat(second))),
  });
}

/** Optical depth of the layer on one crossing; 0 for a beam that is not in it. */
function layerDepth(layer: SmokeLayer | undefined, { beam, specificExtinction }: SmokeScene): number {
  if (layer === undefined || beam.height < layer.face || beam.height > layer.top) return 0;
  return specificExtinction * layer.concentration * beam.separation;
}

function checkScene(
  { diameter, ceiling, area, gradient = 0, roofRise = 0, beam, specificExtinction }: SmokeScene,
  seconds: number,
): void {
  if (!(Number.isInteger(seconds) && seconds > 0)) throw new UsageError(`${seconds} s must be whole and more than 0`);
  refuseUnlessAbove0('diameter', diameter, 'm');
  refuseUnlessAbove0('ceiling height', ceiling, 'm');
  if (!(area > 0)) throw new UsageError(`floor area ${area} m2 must be more than 0`);
  refuseUnlessFrom0('temperature gradient', gradient, 'K/m');
  refuseUnlessFrom0('roof air warmer by', roofRise, 'K');
  refuseUnlessAbove0('separation', beam.separation, 'm');
  refuseUnlessFrom0('aside', beam.aside, 'm');
  refuseUnlessAbove0('specific extinction', specificExtinction, 'm2/kg');
  if (!(beam.height > 0 && beam.height <= ceiling)) {
    throw new UsageError(`beam height ${beam.height} m must be more than 0 and at most the ceiling's, ${ceiling} m`);
  }
  if (!((beam.along ?? 0.5) >= 0 && (beam.along ?? 0.5) <= 1)) {
    throw new UsageError(`along ${beam.along} must be from 0, at one end, to 1, at the other`);
  }
}
