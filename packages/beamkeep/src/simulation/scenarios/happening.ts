import type { Effect } from '../effects/effect.js';
import { random } from '../random.js';
import type { BeamPlan, VisitPlan } from '../scenario.js';
import { drawAerosol, drawElectricalNoise, drawFilm, drawLamp, drawSunlight, drawVibration } from './drawRecurring.js';
import { drawCreep, drawDirt, drawKnock, drawLoadMovement, drawMovement } from './drawSlow.js';
import { drawBlock, drawCoverTest, drawGap, drawSmoke } from './drawSudden.js';
import type { BeamSetting, Setting } from './setting.js';
import type { Pace } from './timing.js';

/** What may be asked to happen to a beam: the causes of a diagnosis, `cleaned` being dirt that is cleaned off. */
export const happenings = [
  'contamination',
  'misalignment-step',
  'misalignment-drift',
  'building-movement',
  'obstruction',
  'condensation',
  'process-aerosol',
  'ambient-light',
  'vibration',
  'electrical-noise',
  'data-gap',
  'smoke-like',
] as const;
/** One of `happenings`. */
export type Happening = (typeof happenings)[number];

/** Paces at which each can be seen, as often as they occur. */
export const paces: Record<Happening, readonly (readonly [Pace, number])[]> = {
  contamination: [
    ['slow', 6],
    ['medium', 1],
  ],
  'misalignment-step': [
    ['slow', 3],
    ['medium', 1],
  ],
  'misalignment-drift': [['slow', 1]],
  'building-movement': [['slow', 1]],
  obstruction: [
    ['fast', 2],
    ['medium', 3],
    ['slow', 2],
  ],
  condensation: [['slow', 1]],
  'process-aerosol': [
    ['slow', 3],
    ['medium', 1],
  ],
  'ambient-light': [['slow', 1]],
  vibration: [
    ['fast', 3],
    ['medium', 1],
    ['slow', 1],
  ],
  'electrical-noise': [
    ['fast', 1],
    ['medium', 2],
    ['slow', 2],
  ],
  'data-gap': [
    ['fast', 1],
    ['medium', 2],
    ['slow', 2],
  ],
  'smoke-like': [
    ['fast', 1],
    ['medium', 4],
    ['slow', 1],
  ],
};

/** Days a log must last for each to be seen. */
export const daysNeeded: Record<Happening, number> = {
  contamination: 4,
  'misalignment-step': 0.3,
  'misalignment-drift': 10,
  'building-movement': 5,
  obstruction: 0,
  condensation: 5,
  'process-aerosol': 3,
  'ambient-light': 5,
  vibration: 0,
  'electrical-noise': 0,
  'data-gap': 0.02,
  'smoke-like': 0.003,
};

/** What one happening brings to one beam. */
export interface Brought {
  readonly effects: readonly Effect[];
  readonly visits: readonly VisitPlan[];
  /** What it asks of the way the beam is built. */
  readonly built?: Partial<Pick<BeamPlan, 'bearing' | 'tilt'>>;
}

/**
 * Draws what a happening brings to a beam.
 *
 * @param shared seed of what the beams of this log share (one mist, one work)
 */
export function bring(happening: Happening, setting: Setting, beam: BeamSetting, shared: number): Brought {
  const common = random(shared, 'shared', happening);
  const { draw } = beam;
  const only = (...effects: Effect[]): Brought => ({ effects, visits: [] });
  switch (happening) {
    case 'contamination': {
      const { effect, visits } = drawDirt(setting, beam);
      return { effects: [effect], visits };
    }
    case 'misalignment-step': {
      const { effect, visits } = drawKnock(setting, beam);
      return { effects: [effect], visits };
    }
    case 'misalignment-drift': {
      const { effect, visits } = drawCreep(setting, beam);
      return { effects: [effect], visits };
    }
    case 'building-movement':
      return draw.chance(0.12) ? only(drawLoadMovement(setting, beam)) : only(drawMovement(setting, beam, false));
    case 'obstruction':
      if (draw.chance(0.1) && setting.intervalSeconds <= 60) {
        const { effect, visits } = drawCoverTest(setting, beam);
        return { effects: [effect], visits };
      }
      return only(drawBlock(setting, beam));
    case 'condensation':
      return only(drawFilm(setting, beam, common, 'mist'));
    case 'process-aerosol':
      return only(drawAerosol(setting, beam, common, 'work'));
    case 'ambient-light': {
      if (draw.chance(0.12)) return only(drawLamp(setting, beam, 'lamps'));
      const { effect, bearing, tilt } = drawSunlight(setting, beam, random(shared, 'shared', 'window'));
      return { effects: [effect], visits: [], built: { bearing, tilt } };
    }
    case 'vibration':
      return only(drawVibration(setting, beam));
    case 'electrical-noise':
      return only(drawElectricalNoise(setting, beam, `${beam.id}/noise`));
    case 'data-gap':
      return only(drawGap(setting, beam, common.pick(['lines', 'cells', 'stuck'])));
    case 'smoke-like':
      return only(drawSmoke(setting, beam));
  }
}
