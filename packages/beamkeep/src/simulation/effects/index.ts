import type { BeamPlan } from '../scenario.js';
import type { Scene } from '../scene.js';
import { aerosol } from './aerosol.js';
import { block } from './block.js';
import { creep } from './creep.js';
import { dirt } from './dirt.js';
import type { Effect, EffectPart } from './effect.js';
import { electricalNoise } from './electricalNoise.js';
import { film } from './film.js';
import { gainStep } from './gainStep.js';
import { gap } from './gap.js';
import { knock } from './knock.js';
import { lamp } from './lamp.js';
import { loadMovement } from './loadMovement.js';
import { measured } from './measured.js';
import { movement } from './movement.js';
import { smoke } from './smoke.js';
import { sunlight } from './sunlight.js';
import { vibration } from './vibration.js';

/**
 * What one effect does to one beam.
 *
 * @param lossAt the beam's slow loss by all other effects at an instant [dB], for effects that depend on it
 */
export function part(effect: Effect, beam: BeamPlan, scene: Scene, lossAt: (instant: number) => number): EffectPart {
  switch (effect.effect) {
    case 'dirt':
      return dirt(effect, scene);
    case 'knock':
      return knock(effect, scene);
    case 'creep':
      return creep(effect, scene);
    case 'movement':
      return movement(effect, scene);
    case 'load-movement':
      return loadMovement(effect, scene);
    case 'block':
      return block(effect, scene);
    case 'film':
      return film(effect, scene);
    case 'aerosol':
      return aerosol(effect, scene);
    case 'sunlight':
      return sunlight(effect, scene);
    case 'lamp':
      return lamp(effect, scene);
    case 'vibration':
      return vibration(effect, scene);
    case 'electrical-noise':
      return electricalNoise(effect, scene, beam.electronics.noise);
    case 'gap':
      return gap(effect, scene);
    case 'gain-step':
      return gainStep(effect, scene, lossAt(effect.time));
    case 'smoke':
      return smoke(effect, scene);
    case 'measured':
      return measured(effect, scene);
  }
}
