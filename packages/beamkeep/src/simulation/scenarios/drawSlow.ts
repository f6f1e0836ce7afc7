import { day, hour, minute } from '../../columns/index.js';
import type { Creep } from '../effects/creep.js';
import type { Cleaning, Dirt } from '../effects/dirt.js';
import type { Knock } from '../effects/knock.js';
import type { LoadMovement } from '../effects/loadMovement.js';
import type { Movement } from '../effects/movement.js';
import { random } from '../random.js';
import type { VisitPlan } from '../scenario.js';
import { atLeast, type BeamSetting, type Setting, within } from './setting.js';
import { swingFor, turnFor } from './turnFor.js';

/** A visit as people write it down: up to an hour or so off, sometimes without its end, sometimes not at all. */
export function visitFor(time: number, beam: BeamSetting, work: VisitPlan['work']): VisitPlan[] {
  const { draw } = beam;
  if (!draw.chance(0.6)) return [];
  const told = Math.round((time + draw.normal() * draw.pick([2, 15, 40]) * minute) / minute) * minute;
  return [
    { time: told, ...(draw.chance(0.3) ? { until: told + draw.integer(15, 120) * minute } : {}), beam: beam.id, work },
  ];
}

/** Dirt, with cleanings in half of the logs. */
export function drawDirt(setting: Setting, beam: BeamSetting): { effect: Dirt; visits: VisitPlan[] } {
  const { ranges, days } = setting;
  const { draw } = beam;
  const law = draw.weighted(ranges.dirtLaw);
  const cleanings: Cleaning[] = [];
  const visits: VisitPlan[] = [];
  if (draw.chance(0.55)) {
    const count = draw.weighted([
      [1, 6],
      [2, 3],
      [3, 1],
    ]);
    for (let k = 0; k < count; k++) {
      const time = within(setting, draw, (k + 0.25) / (count + 0.25), (k + 0.95) / (count + 0.25));
      const by = draw.chance(0.85) ? 'hand' : 'rain';
      cleanings.push({ time, leaves: draw.between(...ranges.cleaningLeaves), by });
      if (by === 'hand') visits.push(...visitFor(time, beam, 'cleaned'));
    }
  }
  const stretch = days / (cleanings.length + 1);
  // Enough to be seen within a stretch, most times; what comes out lower is a trace.
  const rate = Math.min(atLeast(draw, (100 * beam.slow) / stretch, ranges.dirtRate), 55 / stretch);
  return {
    effect: {
      effect: 'dirt',
      stream: `${beam.id}/dirt`,
      ...(draw.chance(0.15) && cleanings.length === 0 ? { from: within(setting, draw, 0.1, 0.5) } : {}),
      before: draw.chance(0.5) ? draw.between(0, 4) : 0,
      rate: law === 'saturating' ? rate * 2 : rate,
      ...(law === 'saturating' ? { most: Math.max(4, rate * stretch * draw.between(0.8, 2.5)) } : {}),
      grows: random(setting.seed, beam.id, 'dirt grows').weighted(ranges.dirtGrows),
      workDaysOnly: law === 'weekday',
      bursts: law === 'bursts' ? draw.between(0.4, 0.95) : draw.chance(0.3) ? draw.between(0, 0.25) : 0,
      uneven: draw.between(...ranges.dirtUneven),
      cleanings,
    },
    visits,
  };
}

/** A knock, aimed again in a third of the logs. */
export function drawKnock(setting: Setting, beam: BeamSetting): { effect: Knock; visits: VisitPlan[] } {
  const { ranges } = setting;
  const { draw } = beam;
  const time = within(setting, draw, 0.12, 0.75);
  const direction = draw.between(0, 2 * Math.PI);
  const turn = turnFor(beam.lobe, beam.offset, direction, atLeast(draw, 1.1 * beam.slow, ranges.knockLoss));
  const aimedAgain = draw.chance(0.35) ? time + draw.between(0.15, 0.9) * (setting.end - time) : undefined;
  return {
    effect: {
      effect: 'knock',
      time,
      turn: [turn * Math.cos(direction), turn * Math.sin(direction)],
      settles: draw.chance(0.3) ? draw.between(0, 0.12) : 0,
      ...(aimedAgain === undefined ? {} : { aimedAgain }),
      leaves: draw.chance(0.5) ? 0 : draw.between(0, 0.15),
    },
    visits: aimedAgain === undefined ? [] : visitFor(aimedAgain, beam, 'realigned'),
  };
}

/** Creeping aim. */
export function drawCreep(setting: Setting, beam: BeamSetting): { effect: Creep; visits: VisitPlan[] } {
  const { ranges, start, end } = setting;
  const { draw } = beam;
  // Mostly on down the flank on which it stands, seldom over the peak first.
  const down = Math.atan2(beam.offset[1], beam.offset[0]);
  const direction = draw.chance(0.8) ? down + draw.between(-0.5, 0.5) * Math.PI : draw.between(0, 2 * Math.PI);
  const turn = turnFor(beam.lobe, beam.offset, direction, atLeast(draw, 1.2 * beam.slow, ranges.creepLoss));
  const from = draw.chance(0.6) ? start : within(setting, draw, 0.05, 0.4);
  const aimedAgain = draw.chance(0.2) ? end - draw.between(0.05, 0.3) * (end - from) : undefined;
  return {
    effect: {
      effect: 'creep',
      from,
      to: aimedAgain ?? end,
      turn: [turn * Math.cos(direction), turn * Math.sin(direction)],
      power: draw.between(...ranges.creepPower),
      ...(aimedAgain === undefined ? {} : { aimedAgain }),
    },
    visits: aimedAgain === undefined ? [] : visitFor(aimedAgain, beam, 'realigned'),
  };
}

/** Movement with heat that is to be found, or that is harmless. */
export function drawMovement(setting: Setting, beam: BeamSetting, harmless: boolean): Movement {
  const { ranges } = setting;
  const { draw } = beam;
  const aside = Math.atan2(beam.offset[1], beam.offset[0]);
  // Mostly towards or away from the peak, where it shows; sometimes across.
  const direction = aside + (draw.chance(0.5) ? Math.PI : 0) + draw.normal() * 0.6;
  const share = harmless
    ? beam.slow * draw.between(...ranges.harmlessSway)
    : atLeast(draw, 1.15 * beam.slow, ranges.swing);
  return {
    effect: 'movement',
    stream: `${beam.id}/movement`,
    swing: swingFor(beam.lobe, beam.offset, direction, share),
    reach: draw.between(0.35, 0.9),
    direction,
    lag: draw.logBetween(...ranges.structureLag),
    across: draw.chance(0.5) ? draw.between(0, 0.35) : 0,
    acrossLag: draw.logBetween(...ranges.structureLag),
    wind: draw.chance(0.4) ? draw.between(0, 0.06) : 0,
    aimedAt: draw.between(0.1, 0.7),
    ...(draw.chance(0.5) ? { givesWay: draw.between(3, 12) } : {}),
  };
}

/** Movement under a crane or a door. */
export function drawLoadMovement(setting: Setting, beam: BeamSetting): LoadMovement {
  const { draw } = beam;
  const direction = draw.between(0, 2 * Math.PI);
  const turn = turnFor(beam.lobe, beam.offset, direction, atLeast(draw, 1.4 * beam.slow, [0.018, 0.12]));
  return {
    effect: 'load-movement',
    stream: `${beam.id}/load`,
    turn: [turn * Math.cos(direction), turn * Math.sin(direction)],
    stays: draw.logBetween(10, 120) * Math.max(1, (setting.intervalSeconds * 4) / 600),
    busy: draw.between(0.25, 0.75),
    ramp: draw.logBetween(20, 240),
  };
}

/** A log long enough for a cause that needs so many days. */
export const lasts = ({ start, end }: Setting, days: number): boolean => end - start >= days * day - hour;
