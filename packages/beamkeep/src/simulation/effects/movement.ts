import { day, hour } from '../../columns/index.js';
import { at, type Grid, lagged, rank } from '../grid.js';
import { random } from '../random.js';
import type { Scene } from '../scene.js';
import { roofHeat } from '../weather.js';
import type { Part, Window } from './part.js';

/*
 * The structure moves with its heat. The turn follows the temperature of the sunlit roof after a lag; a second, smaller
 * movement across it has a lag of its own (a wall, a column), so that the head walks round a loop rather than along a
 * line. Joints that slip and supports that creep let some structures give way to what stays for days: they follow the day
 * and the front, but no season. Wind shakes it a little on some days.
 */

/** Movement of the building with heat. */
export interface Movement {
  readonly effect: 'movement';
  readonly stream: string;
  /** Turn from trough to crest on one of the larger days [half-angles]. */
  readonly swing: number;
  /** Farthest that it turns within the log [half-angles]: beyond, people would have aimed it again. */
  readonly reach: number;
  /** Direction of the turn, counter-clockwise from sideways [rad]. */
  readonly direction: number;
  /** Lag behind the roof's skin [h]. */
  readonly lag: number;
  /** Movement across the main direction, as a share of it. */
  readonly across: number;
  /** Lag of that [h]. */
  readonly acrossLag: number;
  /** Time in which the structure gives way to heat that stays [days]; left out: it does not. */
  readonly givesWay?: number;
  /** Spread of the shaking by wind, as a share of the swing. */
  readonly wind: number;
  /** How far into the log's range of heat the beam was aimed, 0 (cold) to 1 (hot). */
  readonly aimedAt: number;
}

/** What the building's movement does to a beam. */
export function movement(plan: Movement, scene: Scene): Part<Movement> {
  const { time, weather, scenario } = scene;
  const draw = random(scene.seed, plan.stream);
  const heat = (gain: number, lag: number): Grid => {
    const follows = lagged(roofHeat(weather, gain * scenario.solarGain), lag * hour);
    return plan.givesWay === undefined ? follows : minus(follows, lagged(follows, plan.givesWay * day));
  };
  const along = drive(heat(1, plan.lag), plan.aimedAt, scene);
  const aside = drive(heat(0.5, plan.acrossLag), plan.aimedAt, scene);
  const swing = Math.min(plan.swing, plan.reach / farthest(along, scene));
  const [cos, sin] = [Math.cos(plan.direction), Math.sin(plan.direction)];
  const x = new Float32Array(time.length);
  const y = new Float32Array(time.length);
  let [gust, calm] = [0, 1];
  let before = time[0] ?? 0;
  for (let i = 0; i < time.length; i++) {
    const instant = time[i] as number;
    if (plan.wind > 0) {
      const keep = Math.exp(-(instant - before) / (20 * 60_000));
      const mood = Math.exp(-(instant - before) / day);
      gust = keep * gust + Math.sqrt(1 - keep * keep) * draw.normal();
      calm = mood * calm + Math.sqrt(1 - mood * mood) * draw.normal();
      before = instant;
    }
    const main = swing * (at(along, instant) + plan.wind * gust * Math.max(0, calm));
    const cross = swing * plan.across * at(aside, instant);
    x[i] = cos * main - sin * cross;
    y[i] = sin * main + cos * cross;
  }
  return { effect: plan, cause: 'building-movement', windows: dayWindows(scene), turn: [x, y] };
}

/** What is left of a grid without another of the same steps. */
const minus = (grid: Grid, other: Grid): Grid => ({
  ...grid,
  values: grid.values.map((value, i) => value - (other.values[i] as number)),
});

/** Farthest that a grid stands from nought within the log. */
function farthest(grid: Grid, { time }: Scene): number {
  let most = 1e-6;
  for (let i = 0; i < grid.values.length; i++) {
    const instant = grid.start + i * grid.step;
    if (instant < (time[0] ?? 0) || instant > (time[time.length - 1] ?? 0)) continue;
    most = Math.max(most, Math.abs(grid.values[i] as number));
  }
  return most;
}

/** A grid brought to swing by one from trough to crest on a large day, and to nought where the beam was aimed. */
function drive(grid: Grid, aimedAt: number, scene: Scene): Grid {
  const from = Math.max(0, Math.floor(((scene.time[0] ?? grid.start) - grid.start) / grid.step));
  const to = Math.ceil(((scene.time[scene.time.length - 1] ?? grid.start) - grid.start) / grid.step) + 1;
  const inLog = grid.values.subarray(from, Math.max(to, from + 1));
  const perDay = Math.round(day / grid.step);
  const swings: number[] = [];
  for (let i = 0; i + perDay <= inLog.length; i += perDay) {
    const part = inLog.subarray(i, i + perDay);
    swings.push(Math.max(...part) - Math.min(...part));
  }
  if (swings.length === 0) {
    const part = grid.values.subarray(Math.max(0, to - perDay), to);
    swings.push(Math.max(...part) - Math.min(...part));
  }
  const scale = Math.max(rank(swings, 0.85), 1e-6);
  const zero = rank(inLog, aimedAt);
  return { ...grid, values: grid.values.map((value) => (value - zero) / scale) };
}

/** Every local calendar day that the log touches, from midnight to midnight. */
export function dayWindows({ time, clock }: Scene): Window[] {
  const [first, last] = [time[0] ?? 0, time[time.length - 1] ?? 0];
  const days: Window[] = [];
  for (let localDay = clock.day(first); localDay <= clock.day(last); localDay++) {
    days.push({ from: clock.instant(localDay * day), to: clock.instant((localDay + 1) * day) - 1 });
  }
  return days;
}
