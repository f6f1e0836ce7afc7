import type { Aerosol } from './aerosol.js';
import type { Block } from './block.js';
import type { Creep } from './creep.js';
import type { Dirt } from './dirt.js';
import type { ElectricalNoise } from './electricalNoise.js';
import type { Film } from './film.js';
import type { GainStep } from './gainStep.js';
import type { Gap } from './gap.js';
import type { Knock } from './knock.js';
import type { Lamp } from './lamp.js';
import type { LoadMovement } from './loadMovement.js';
import type { Measured } from './measured.js';
import type { Movement } from './movement.js';
import type { Part } from './part.js';
import type { Smoke } from './smoke.js';
import type { Sunlight } from './sunlight.js';
import type { Vibration } from './vibration.js';

/** Something that happens to a beam. */
export type Effect =
  | Dirt
  | Knock
  | Creep
  | Movement
  | LoadMovement
  | Block
  | Film
  | Aerosol
  | Sunlight
  | Lamp
  | Vibration
  | ElectricalNoise
  | Gap
  | GainStep
  | Smoke
  | Measured;

/** What one of these effects does to one beam's light. */
export type EffectPart = Part<Effect>;
