import { minute } from '../../columns/index.js';
import { sunPosition } from '../../optics/index.js';
import type { Aerosol } from '../effects/aerosol.js';
import type { ElectricalNoise } from '../effects/electricalNoise.js';
import type { Film } from '../effects/film.js';
import type { Lamp } from '../effects/lamp.js';
import type { Window } from '../effects/part.js';
import type { Sunlight } from '../effects/sunlight.js';
import type { Vibration } from '../effects/vibration.js';
import { aimLoss } from '../lobe.js';
import type { Random } from '../random.js';
import { atLeast, type BeamSetting, decibels, type Setting, within } from './setting.js';

/** Mist, shared with the other beams of the log when its stream is. */
export function drawFilm(setting: Setting, beam: BeamSetting, shared: Random, stream: string): Film {
  const { ranges } = setting;
  const { draw } = beam;
  return {
    effect: 'film',
    stream,
    depth: atLeast(draw, decibels(1.6 * beam.slow), ranges.filmDepth),
    nights: shared.between(...ranges.filmNights),
    cooling: shared.between(1.5, 5),
    dries: shared.logBetween(...ranges.filmDries),
    own: shared.between(0.1, 0.9),
    ...(setting.days > 60 && shared.chance(0.4)
      ? { season: [within(setting, shared, -0.2, 0.4), within(setting, shared, 0.55, 1.2)] as const }
      : {}),
    late: shared.between(0, 1.2),
  };
}

/** Dust, steam or exhaust of one work in one hall. */
export function drawAerosol(setting: Setting, beam: BeamSetting, shared: Random, stream: string): Aerosol {
  const { ranges, days } = setting;
  const { draw } = beam;
  const from = shared.between(0, 0.4);
  const few = days > 40 && shared.chance(0.15);
  return {
    effect: 'aerosol',
    stream,
    depth: atLeast(draw, decibels(1.5 * beam.fast), ranges.aerosolDepth),
    uneven: shared.between(0.15, 0.5),
    active: days < 8 ? 1 : shared.between(...ranges.aerosolActive),
    ...(few ? { weekdays: shared.pick([[2], [1, 4], [3], [5]]) } : {}),
    puffs: shared.logBetween(4, 40),
    rises: shared.logBetween(0.5, 8),
    clears: shared.logBetween(4, 35),
    ragged: shared.between(...ranges.aerosolRagged),
    hours: shared.chance(0.4) ? [0, 1] : [from, Math.min(1, from + shared.between(0.3, 0.7))],
    ...(days > 60 && shared.chance(0.3)
      ? { season: [within(setting, shared, -0.2, 0.4), within(setting, shared, 0.55, 1.2)] as const }
      : {}),
  };
}

/** Sun through a window: the patch lies where the sun stands at some hour of some day of the log. */
export function drawSunlight(
  setting: Setting,
  beam: BeamSetting,
  shared: Random,
): { effect: Sunlight; bearing: number; tilt: number } {
  const { ranges, place } = setting;
  const { draw } = beam;
  // Beams side by side look through one window as a rule.
  const window = draw.chance(0.6) ? shared : draw;
  let sun = { azimuth: 180, refracted: 20 };
  const highest = window.pick([25, 45, 70]);
  for (let k = 0; k < 60; k++) {
    sun = sunPosition(within(setting, window, 0.1, 0.9), place.latitude, place.longitude);
    if (sun.refracted > 4 && sun.refracted < highest) break;
  }
  const width = window.between(2.5, 10) + setting.intervalSeconds / 300;
  const low = Math.max(1, sun.refracted - window.between(3, 9));
  const high = low + window.between(8, 22);
  const adds = atLeast(draw, 1.6 * beam.fast, ranges.lightAdds);
  const roughens = draw.chance(0.12); // it hardly moves the level, but shakes it
  return {
    effect: {
      effect: 'sunlight',
      stream: `${beam.id}/sun`,
      azimuth: [sun.azimuth, width],
      elevation: [low, high],
      adds: roughens ? 0.3 * adds : draw.chance(0.25) ? -Math.min(0.9, adds * draw.between(1, 2.5)) : adds,
      rough: roughens ? draw.between(1.2, 3) : draw.between(...ranges.lightRough),
      edge: window.between(0.4, 2.5),
    },
    bearing: (sun.azimuth + draw.normal() * 6 + 360) % 360,
    tilt: Math.max(-5, Math.min(20, sun.refracted * draw.between(0, 0.5))),
  };
}

/** Lamps over the work. */
export function drawLamp(setting: Setting, beam: BeamSetting, stream: string): Lamp {
  const { draw } = beam;
  return {
    effect: 'lamp',
    stream,
    adds: atLeast(draw, 1.6 * beam.fast, [setting.ranges.lightAdds[0], 0.15]),
    rough: draw.between(0, 0.4),
    darkOnly: draw.chance(0.5),
  };
}

/** Vibration whose swing of the level, trough to crest, is drawn. */
export function drawVibration(setting: Setting, beam: BeamSetting): Vibration {
  const { ranges, days } = setting;
  const { draw } = beam;
  const swing = atLeast(draw, 1.2 * beam.fast, ranges.vibrationSwing);
  const direction = Math.atan2(beam.offset[1], beam.offset[0]) + draw.normal() * 0.5;
  const amplitude = shakeFor(beam, direction, swing);
  return {
    effect: 'vibration',
    stream: `${beam.id}/vibration`,
    frequency: draw.logBetween(...ranges.vibrationHertz),
    turn: [amplitude * Math.cos(direction), amplitude * Math.sin(direction)],
    wander: draw.logBetween(0.0002, 0.008),
    runs: days >= 1.5 ? 'shifts' : stretches(setting, draw, 1, 3, 0.15, 0.6),
    duty: draw.chance(0.5) ? 1 : draw.between(0.4, 0.9),
  };
}

/** Amplitude that swings the level by a share, trough to crest [half-angles]. */
function shakeFor({ lobe, offset }: BeamSetting, direction: number, swing: number): number {
  const [x, y] = offset;
  const zero = aimLoss(lobe, x, y);
  let [low, high] = [0, 1.5];
  for (let k = 0; k < 40; k++) {
    const middle = (low + high) / 2;
    const levels = [-1, -0.5, 0, 0.5, 1].map(
      (part) =>
        10 **
        ((zero - aimLoss(lobe, x + part * middle * Math.cos(direction), y + part * middle * Math.sin(direction))) / 10),
    );
    if (Math.max(...levels) - Math.min(...levels) < swing) low = middle;
    else high = middle;
  }
  return high;
}

/** Interference. */
export function drawElectricalNoise(setting: Setting, beam: BeamSetting, stream: string): ElectricalNoise {
  const { ranges, days } = setting;
  const { draw } = beam;
  // Drawn as so many times the beam's own noise, but seen against the scale, and never a storm.
  const least = Math.max(2.2, (0.4 * beam.slow) / beam.noise, (0.6 * beam.step) / beam.noise);
  const most = Math.max(1.5 * least, Math.min(ranges.noiseTimes[1], ranges.noiseMost / beam.noise));
  const times = draw.logBetween(least, most);
  const grows = draw.chance(0.2);
  return {
    effect: 'electrical-noise',
    stream,
    bursts: grows
      ? [{ from: within(setting, draw, 0.1, 0.4), to: setting.end }]
      : days >= 3 && draw.chance(0.3)
        ? 'shifts'
        : stretches(setting, draw, 1, 6, 0.02, 0.2),
    times,
    spikes: draw.chance(0.4) ? draw.logBetween(2, 120) : 0,
    spikeHeight: beam.noise * times * draw.between(3, 8),
    grows,
  };
}

/** Some stretches of a log, in order and apart, each of a share of its length. */
export function stretches(
  setting: Setting,
  draw: Random,
  least: number,
  most: number,
  short: number,
  long: number,
): Window[] {
  const count = draw.integer(least, most);
  const length = setting.end - setting.start;
  const found: Window[] = [];
  for (let k = 0; k < count; k++) {
    const room = 0.9 / count;
    const lasts = Math.max(
      Math.min(draw.logBetween(short, long), 0.8 * room) * length,
      40 * setting.intervalSeconds * 1000,
    );
    const from = setting.start + (0.05 + k * room) * length + draw.uniform() * Math.max(0, room * length - lasts);
    found.push({ from: Math.round(from), to: Math.round(Math.min(from + lasts, setting.end - minute / 60)) });
  }
  return found;
}
