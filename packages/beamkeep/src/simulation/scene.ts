import { hour } from '../columns/index.js';
import { type Shift, shifts } from './calendar.js';
import { type LocalClock, localClock } from './clock.js';
import { type Grid, lagged } from './grid.js';
import { random } from './random.js';
import type { Surroundings } from './surroundings.js';
import { roofHeat, type Weather, weather } from './weather.js';

/** What all beams of a log live in: time, weather and working hours. */
export interface Scene {
  readonly seed: number;
  readonly scenario: Surroundings;
  /** Instants at which the logger looks [ms], strictly rising. */
  readonly time: Float64Array;
  readonly clock: LocalClock;
  readonly weather: Weather;
  /** Temperature of the roof's skin [degC]. */
  readonly roof: Grid;
  /** What the thermometer at the structure shows [degC]. */
  readonly structure: Grid;
  readonly shifts: readonly Shift[];
}

/** Sets the scene. */
export function scene(scenario: Surroundings, seed: number): Scene {
  const time = instants(scenario, seed);
  const from = scenario.start;
  const to = time[time.length - 1] ?? from;
  const clock = localClock(scenario.timeZone, from - 8 * 24 * hour, to + 8 * 24 * hour);
  const sky = weather(scenario.climate, scenario.latitude, scenario.longitude, seed, from, to);
  const roof = roofHeat(sky, scenario.solarGain);
  return {
    seed,
    scenario,
    time,
    clock,
    weather: sky,
    roof,
    structure: lagged(roof, scenario.thermometerLag * hour),
    shifts: shifts(scenario.calendar, seed, clock, from, to),
  };
}

/** When the logger looks: every so often, give or take its jitter, on the tick of its own clock. */
function instants({ start, samples, intervalSeconds, recording }: Surroundings, seed: number): Float64Array {
  const draw = random(seed, 'jitter');
  const time = new Float64Array(samples);
  const { jitter, drift, tick } = recording;
  let last = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < samples; i++) {
    const wander = jitter === 0 ? 0 : Math.max(-0.45, Math.min(0.45, jitter * draw.normal()));
    const exact = start + (i * (1 + drift) + wander) * intervalSeconds * 1000;
    last = Math.max(Math.round(exact / tick) * tick, last + tick);
    time[i] = last;
  }
  return time;
}
