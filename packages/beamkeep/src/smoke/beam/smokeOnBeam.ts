import { crossings, type Layout } from '../../attenuation/index.js';
import { UsageError } from '../../columns/index.js';
import { warmRoofDepth } from '../../numbers/index.js';
import { type Air, hallAir } from '../air.js';
import { riseHeight, warmestRoof } from '../ceiling/stratification.js';
import { transportLag } from '../ceiling/transportLag.js';
import { convective, type DesignFire } from '../fire/designFire.js';
import { layerFilling, lifts, type SmokeLayer } from '../layer.js';
import { layerSpread } from '../layerSpread.js';
import { type Place, plumeBeside } from '../plume/besideWalls.js';
import { refuseUnlessAbove0, refuseUnlessFrom0 } from '../refuse.js';
import { arrivals } from './arrivals.js';
import { jetExtinction, jetPieces } from './jetLoss.js';
import { plumeDepth } from './plumeLoss.js';

/*
 * From a fire to a beam, second by second. What the fire makes in a second rises, spreads and is late by the transport
 * lag; what arrives is reckoned as of a steady fire of the size it had then. The beam sees the thickest of three:
 *
 *     plume   the column above the fire, where the beam passes through it or near
 *     jet     the thin layer that runs out under the ceiling from above the fire
 *     layer   the smoke that has gathered under the whole roof
 *
 * The greatest, not the sum: they are the same smoke at three stages. To it comes the haze of a fire too weak to lift
 * its smoke, which draughts mix through the hall. Where warm air stops the plume below the roof,
 * there is no jet, and the layer hangs at that height until the fire has grown.
 *
 * The layer comes with a sharp face, and where that face is, is the least certain of all (`layerSpread`): on demand the
 * beam sees the most, or the least, that the same smoke gives with its face at the lowest, the usual, the highest.
 */

/** Where the face of the smoke layer is taken: most smoke for the beam, the zone model, least smoke. */
export const layerArrivals = ['early', 'usual', 'late'] as const;
/** One of `layerArrivals`. */
export type LayerArrival = (typeof layerArrivals)[number];

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
  /** Where the face of the layer is taken; `usual`, the zone model, where left out. */
  readonly layerArrival?: LayerArrival;
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
  /** Which smoke it mostly was: a row of `smokeStages`. */
  readonly from: Uint8Array;
}

/** Names of what a beam sees, by the number in `SmokeCurve.from`. */
export const smokeStages = ['none', 'haze', 'plume', 'jet', 'layer'] as const;

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
  const { fire, beam, specificExtinction } = scene;
  const rows = seconds + 1;
  const heat = Float64Array.from({ length: rows }, (_, second) => fire.heat(second));
  const plume = plumeDepths(scene, heat);
  const jet = jetDepths(scene, heat);
  const layers = gathered(scene, seconds);
  const decibels = new Float64Array(rows);
  const from = new Uint8Array(rows);
  const perDepth = (10 / Math.LN10) * crossings(beam.layout);
  for (let i = 0; i < rows; i++) {
    const mixed = specificExtinction * (layers[i]?.mixed ?? 0) * beam.separation;
    const stages = [
      mixed,
      mixed + (plume[i] as number),
      mixed + (jet[i] as number),
      mixed + layerDepth(layers[i], scene),
    ];
    const depth = Math.max(...stages);
    from[i] = depth > 0 ? 1 + stages.indexOf(depth) : 0;
    decibels[i] = Number.isNaN(heat[i]) ? Number.NaN : perDepth * depth;
  }
  return { seconds: Float64Array.from(heat, (_, second) => second), heat, decibels, from };
}

/** Optical depth of the plume at the beam, one crossing, as it arrives. */
function plumeDepths(scene: SmokeScene, heat: Float64Array): Float64Array {
  const { fire, diameter, place = 'free', air = hallAir, beam, specificExtinction } = scene;
  const { radiativeShare } = fire.fuel;
  return arrivals(
    heat.map((now, second) => {
      const passes = beam.height <= plumeTop(scene, convective(fire.fuel, now));
      if (!passes || !lifts(now, fire, diameter, beam.height, air)) return 0;
      const plume = plumeBeside(place, { heat: now, radiativeShare, diameter }, beam.height, air);
      return plumeDepth(plume, fire.smoke(second), specificExtinction, beam.aside, air);
    }),
    lagsOf(heat, (now) => transportLag(now, beam.height, 0).rising),
  );
}

/** Optical depth of the ceiling jet along the beam, one crossing: every piece of it at its own lag. */
function jetDepths(scene: SmokeScene, heat: Float64Array): Float64Array {
  const { fire, diameter, ceiling, air = hallAir, beam, specificExtinction } = scene;
  const { along = 0.5, separation, height, aside } = beam;
  const ends = [along * separation, (1 - along) * separation] as const;
  const feeds = Array.from(heat, (now, second) => {
    const convectiveHeat = convective(fire.fuel, now);
    const runs = plumeTop(scene, convectiveHeat) >= ceiling && lifts(now, fire, diameter, ceiling, air);
    return runs ? { convectiveHeat, smokeRate: fire.smoke(second) } : undefined;
  });
  const depth = new Float64Array(heat.length);
  for (const { radius, length } of jetPieces(ceiling, { below: ceiling - height, aside, ends })) {
    const extinction = Float64Array.from(feeds, (feed) =>
      feed === undefined ? 0 : jetExtinction(feed, ceiling, radius, specificExtinction, air),
    );
    const lags = lagsOf(heat, (now) => {
      const { rising, outward } = transportLag(now, ceiling, radius);
      return rising + outward;
    });
    arrivals(extinction, lags).forEach((value, i) => {
      depth[i] = (depth[i] as number) + value * length;
    });
  }
  return depth;
}

/** Lag of what leaves in every second. Where the fire is out, clear air follows as slowly as its last smoke. */
function lagsOf(heat: Float64Array, lagOf: (heat: number) => number): Float64Array {
  let lag = Number.POSITIVE_INFINITY;
  return heat.map((now) => {
    if (now > 0) lag = lagOf(now);
    return lag;
  });
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
function layerDepth(layer: SmokeLayer | undefined, scene: SmokeScene): number {
  const { beam, specificExtinction, layerArrival = 'usual', fire, air = hallAir } = scene;
  if (layer === undefined || beam.height > layer.top) return 0;
  const { face, top, concentration } = layer;
  const whole = specificExtinction * beam.separation * concentration;
  /** The same smoke, spread evenly down to another face. */
  const above = (other: number): number => (beam.height < other ? 0 : (whole * (top - face)) / (top - other));
  const usual = beam.height < face ? 0 : whole;
  if (layerArrival === 'usual' || !(face < top)) return usual;
  const { lowest, highest } = layerSpread(face, top, fire.fuel.radiativeShare, air);
  const all = [usual, above(lowest), highest < top ? above(highest) : 0];
  return layerArrival === 'early' ? Math.max(...all) : Math.min(...all);
}

function checkScene(
  { diameter, ceiling, area, gradient = 0, roofRise = 0, beam, specificExtinction }: SmokeScene,
  seconds: number,
): void {
  if (!(Number.isInteger(seconds) && seconds > 0)) throw new UsageError(`${seconds} s must be whole and more than 0`);
  refuseUnlessAbove0('diameter', diameter, 'm');
  refuseUnlessAbove0('ceiling height', ceiling, 'm');
  if (!(area > 0)) throw new UsageError(`floor area ${area} m² must be more than 0`);
  refuseUnlessFrom0('temperature gradient', gradient, 'K/m');
  refuseUnlessFrom0('roof air warmer by', roofRise, 'K');
  refuseUnlessAbove0('separation', beam.separation, 'm');
  refuseUnlessFrom0('aside', beam.aside, 'm');
  refuseUnlessAbove0('specific extinction', specificExtinction, 'm²/kg');
  if (!(beam.height > 0 && beam.height <= ceiling)) {
    throw new UsageError(`beam height ${beam.height} m must be more than 0 and at most the ceiling's, ${ceiling} m`);
  }
  if (!((beam.along ?? 0.5) >= 0 && (beam.along ?? 0.5) <= 1)) {
    throw new UsageError(`along ${beam.along} must be from 0, at one end, to 1, at the other`);
  }
}
