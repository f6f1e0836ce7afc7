import { percentToDecibels, specificExtinction } from '../../attenuation/index.js';
import { UsageError } from '../../columns/index.js';
import { blockedFrom, blockedWithin, flamingExtinction } from '../../numbers/index.js';
import type { Beam } from '../../site/index.js';
import { type DesignFire, type LayerArrival, type SmokeScene, smokeOnBeam } from '../../smoke/index.js';
import { firstHeld } from './firstHeld.js';

/*
 * How late an alarm is, for every pair of threshold and delay. Three runs bracket what is not known:
 *
 *     early    fire at its nearest place, highest yield, highest extinction, layer as early as published laws have it
 *     value    fire at its usual place, middle figures, layer of the zone model
 *     late     fire at its farthest place, lowest yield, lowest extinction, layer as late as published laws have it
 *
 * The loss in decibels is in proportion to yield and extinction, so the band costs no more than its places.
 */

/** A hall as the fire meets it. Heights above the fuel. */
export interface FireHall {
  /** Where the beams run [m]. */
  readonly ceiling: number;
  /** Floor area under one roof [m2]. */
  readonly area: number;
  /** [K/m] */
  readonly gradient?: number;
  /** [K] */
  readonly roofRise?: number;
}

/** Least distance between beam and fire, in plan [m]: at best, usually, at worst. */
export interface Places {
  readonly nearest: number;
  readonly usual: number;
  readonly farthest: number;
}

/** A fire that the beam shall see. */
export interface WatchedFire {
  readonly fire: DesignFire;
  /** [m] */
  readonly diameter: number;
  /** How long it is watched [s]. */
  readonly seconds: number;
}

/** A beam as far as detection asks. */
export type WatchingBeam = Pick<Beam, 'layout' | 'separation' | 'wavelength'> & {
  /** Above the fuel [m]. */
  readonly height: number;
};

/** A figure with its band; infinite: not while the fire was watched. */
export interface Band {
  readonly value: number;
  readonly early: number;
  readonly late: number;
}

/** When a fire is found, and how large it is then. */
export interface Detection {
  /** After ignition [s]. */
  readonly seconds: Band;
  /** Heat release rate at that time [kW]. */
  readonly heat: Band;
}

/** Loss of a beam by one fire: one column a run, one row a second [dB]. */
export interface FireCurves {
  readonly fire: DesignFire;
  readonly value: Float64Array;
  readonly early: Float64Array;
  readonly late: Float64Array;
  /** Heat release rate [kW]. */
  readonly heat: Float64Array;
  /** The scene of the late run, and how long it was watched [s]. */
  readonly scene: SmokeScene;
  readonly watched: number;
}

/** Share by which specific extinction may be off: as stated for flaming soot; nothing is stated for smouldering. */
const extinctionSpread = flamingExtinction.spread / flamingExtinction.value;

/** How much more and how much less smoke than the middle figures a fire may show: yield, heat, extinction. */
export function smokeSpan({ fuel: { sootYield, heatOfCombustion } }: DesignFire): { low: number; high: number } {
  const middle = sootYield.value / heatOfCombustion.value;
  return {
    low: (sootYield.low / heatOfCombustion.high / middle) * (1 - extinctionSpread),
    high: (sootYield.high / heatOfCombustion.low / middle) * (1 + extinctionSpread),
  };
}

/**
 * What a beam sees of a fire, with its band.
 *
 * @throws UsageError for places that do not rise, and for a scene that cannot be
 */
export function fireCurves(
  beam: WatchingBeam,
  hall: FireHall,
  places: Places,
  { fire, diameter, seconds }: WatchedFire,
): FireCurves {
  const { nearest, usual, farthest } = places;
  if (!(nearest >= 0 && nearest <= usual && usual <= farthest)) {
    throw new UsageError(`places ${nearest}, ${usual}, ${farthest} m must rise from 0: nearest, usual, farthest`);
  }
  const { layout, separation, wavelength, height } = beam;
  const scene = (aside: number, layerArrival: LayerArrival): SmokeScene => ({
    ...hall,
    layerArrival,
    fire,
    diameter,
    beam: { layout, separation, height, aside },
    specificExtinction: specificExtinction(fire.fuel.kind, wavelength),
  });
  const { low, high } = smokeSpan(fire);
  const middle = smokeOnBeam(scene(usual, 'usual'), seconds);
  return {
    fire,
    value: middle.decibels,
    early: smokeOnBeam(scene(nearest, 'early'), seconds).decibels.map((loss) => loss * high),
    late: smokeOnBeam(scene(farthest, 'late'), seconds).decibels.map((loss) => loss * low),
    heat: middle.heat,
    scene: scene(farthest, 'late'),
    watched: seconds,
  };
}

/** When a fire is found with a threshold [%] and a delay [s], and how large it is then. */
export function detection(curves: FireCurves, threshold: number, delaySeconds: number): Detection {
  const needed = percentToDecibels(threshold);
  const value = firstHeld(curves.value, needed, delaySeconds);
  const early = Math.min(value, firstHeld(curves.early, needed, delaySeconds));
  const late = Math.max(value, firstHeld(curves.late, needed, delaySeconds));
  const heatAt = (second: number): number => curves.heat[second] ?? Number.POSITIVE_INFINITY;
  return {
    seconds: { value, early, late },
    heat: { value: heatAt(value), early: heatAt(early), late: heatAt(late) },
  };
}

/**
 * Whether the smoke of a fire could pass for a blocked beam: from clear to the fault threshold within two seconds.
 *
 * @param faultThreshold obscuration treated as a blocked beam [%]
 */
export function looksBlocked({ early }: FireCurves, faultThreshold: number): boolean {
  const clear = percentToDecibels(blockedFrom.value);
  const blocked = percentToDecibels(faultThreshold);
  return early.some((loss, i) => loss >= blocked && (early[Math.max(0, i - blockedWithin.value)] as number) < clear);
}
