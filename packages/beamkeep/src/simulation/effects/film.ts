import { day, hour } from '../../columns/index.js';
import { at, type Grid, lagged, rank } from '../grid.js';
import { random } from '../random.js';
import type { Scene } from '../scene.js';
import type { Part, Window } from './part.js';

/*
 * Mist or dew on the optics. The optics cool towards the clear night sky; where they fall below the dew point of the
 * air about them a film grows, and it dries as they warm:
 *
 *     df/dt = wetting · max(0, dew - optics) - f · drying · (a little + max(0, optics - dew) + daylight)
 *
 * so a film is smooth, comes about the coldest hours of some nights and not of others, and is gone by late morning.
 */

/** A film of mist or dew. */
export interface Film {
  readonly effect: 'film';
  /** Beams that share a film (at one height) draw from one stream. */
  readonly stream: string;
  /** Loss at the deepest of an ordinary misty night [dB]. */
  readonly depth: number;
  /** Share of the nights with mist, 0 to 1. */
  readonly nights: number;
  /** How much colder than the air the optics get under a clear sky [K]. */
  readonly cooling: number;
  /** How long a film takes to dry [h]. */
  readonly dries: number;
  /** Share of the dew margin's spread that is the room's own (washing, people, doors), 0 to 1. */
  readonly own: number;
  /** First and last instant at which mist can come at all [ms]; left out: the whole log. */
  readonly season?: readonly [number, number];
  /** Hours by which the film runs late behind the sky (thick walls) [h]. */
  readonly late: number;
}

/** The dew margin of the optics [K]: below nought they are wet. Also what a film does with it. */
function margin(plan: Film, { weather, seed }: Scene): Grid {
  const draw = random(seed, plan.stream, 'room');
  const cold = weather.air.values.map((air, i) => {
    const night = Math.max(0, Math.min(1, (4 - (weather.elevation.values[i] as number)) / 8));
    return air - plan.cooling * night * (1 - 0.8 * (weather.cloud.values[i] as number));
  });
  const optics = lagged({ ...weather.air, values: cold }, (0.7 + plan.late) * hour);
  const keep = Math.exp(-optics.step / (18 * hour));
  let room = draw.normal();
  const values = optics.values.map((value, i) => {
    room = keep * room + Math.sqrt(1 - keep * keep) * draw.normal();
    return value - (weather.dewPoint.values[i] as number) - 3 * plan.own * room;
  });
  return { ...optics, values };
}

/** What a film does to a beam. */
export function film(plan: Film, scene: Scene): Part<Film> {
  const { time, clock } = scene;
  const dew = margin(plan, scene);
  const perDay = Math.round(day / dew.step);
  const coldest: number[] = [];
  const [first, last] = plan.season ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let i = 0; i + perDay <= dew.values.length; i += perDay) {
    const noon = dew.start + (i + perDay / 2) * dew.step;
    if (noon < first || noon > last || noon > (time[time.length - 1] ?? 0) + day) continue;
    coldest.push(Math.min(...dew.values.subarray(i, i + perDay)));
  }
  const limit = rank(coldest, plan.nights); // so many nights fall below it
  const hours = dew.step / hour;
  let thick = 0;
  const thickness = dew.values.map((value, i) => {
    const above = value - limit;
    const day = Math.max(0, Math.min(1, (scene.weather.elevation.values[i] as number) / 15));
    thick += hours * Math.max(0, -above) * (1 - day);
    const drying = above < 0 ? 0.15 + day : 0.5 + Math.min(2.5, above / 1.5) + 1.5 * day;
    thick *= Math.exp((-hours / plan.dries) * drying);
    return thick;
  });
  const allowed = (instant: number) => smoothStep((instant - first) / day) * smoothStep((last - instant) / day);
  // A night runs from local noon to local noon.
  const windows: Window[] = [];
  const [from, to] = [time[0] ?? 0, time[time.length - 1] ?? 0];
  for (let localDay = clock.day(from) - 1; localDay <= clock.day(to); localDay++) {
    windows.push({ from: clock.instant(localDay * day + day / 2), to: clock.instant(localDay * day + 1.5 * day) - 1 });
  }
  const grid: Grid = { ...dew, values: thickness };
  const deepest = windows.map((night) => {
    let most = 0;
    for (let i = 0; i < perDay; i++) most = Math.max(most, at(grid, night.from + i * dew.step));
    return most;
  });
  const typical = rank(
    deepest.filter((value) => value > 0.15),
    0.5,
  );
  const scale = Number.isNaN(typical) ? 0 : plan.depth / typical;
  return {
    effect: plan,
    cause: 'condensation',
    windows,
    loss: Float32Array.from(time, (instant) => {
      // Thick films run off: the loss bends over past twice the ordinary depth.
      const raw = scale * at(grid, instant) * allowed(instant);
      return raw < 1e-4 ? 0 : 3 * plan.depth * (1 - Math.exp(-raw / (3 * plan.depth)));
    }),
  };
}

const smoothStep = (x: number) => (x <= 0 ? 0 : x >= 1 ? 1 : x * x * (3 - 2 * x));
