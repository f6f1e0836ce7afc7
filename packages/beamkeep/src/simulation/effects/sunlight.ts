import { at } from '../grid.js';
import { random } from '../random.js';
import type { Scene } from '../scene.js';
import { dayWindows } from './movement.js';
import type { Part } from './part.js';

/*
 * Sun through a window onto the receiver. It comes when the sun stands in a patch of sky (the window as the receiver
 * sees it) and no cloud is before it, so its clock hour moves with the season and it comes and goes by months. It adds
 * to what the beam brings, or, where it blinds the receiver, takes away.
 */

/** Sun on the receiver. */
export interface Sunlight {
  readonly effect: 'sunlight';
  readonly stream: string;
  /** Patch of sky: middle and half width in azimuth, clockwise from north [degrees]. */
  readonly azimuth: readonly [number, number];
  /** Patch of sky: lowest and highest elevation [degrees]. */
  readonly elevation: readonly [number, number];
  /** What full sun adds [share of clean air]; negative where it blinds the receiver. */
  readonly adds: number;
  /** Spread of the samples in full sun, as a share of what it adds. */
  readonly rough: number;
  /** Width of the patch's soft edge [degrees]. */
  readonly edge: number;
}

/** What the sun does to a beam's receiver. */
export function sunlight(plan: Sunlight, scene: Scene): Part<Sunlight> {
  const draw = random(scene.seed, plan.stream);
  const { time, weather } = scene;
  let flicker = 0;
  const light = Float32Array.from(time, (instant, i) => {
    const elevation = at(weather.elevation, instant);
    if (elevation < 0) return 0;
    const aside = Math.abs(turn(scene, instant) - plan.azimuth[0]) % 360;
    const away = Math.min(aside, 360 - aside);
    const inside =
      soft((plan.azimuth[1] - away) / plan.edge) *
      soft((elevation - plan.elevation[0]) / plan.edge) *
      soft((plan.elevation[1] - elevation) / plan.edge);
    if (inside === 0) return 0;
    const keep = Math.exp(-(instant - (time[i - 1] ?? instant)) / 90_000);
    flicker = keep * flicker + Math.sqrt(1 - keep * keep) * draw.normal();
    const cloud = at(weather.cloud, instant);
    const clear = soft(1.7 - 3.2 * cloud + 0.9 * flicker * cloud);
    const haze = Math.sin((Math.PI / 180) * Math.max(elevation, 1)) ** 0.25;
    return plan.adds * inside * clear * haze * (1 + plan.rough * draw.normal());
  });
  return { effect: plan, cause: 'ambient-light', windows: dayWindows(scene), light };
}

/** Azimuth between two points of the grid, across north without a jump. */
function turn({ weather: { azimuth } }: Scene, instant: number): number {
  const place = (instant - azimuth.start) / azimuth.step;
  const low = azimuth.values[Math.floor(place)] ?? 0;
  const high = azimuth.values[Math.floor(place) + 1] ?? low;
  const change = ((((high - low + 180) % 360) + 360) % 360) - 180;
  return low + change * (place - Math.floor(place));
}

const soft = (x: number) => Math.min(1, Math.max(0, x));
