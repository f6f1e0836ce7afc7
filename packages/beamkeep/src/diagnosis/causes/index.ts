import type { Cause } from '../cause.js';
import { ambientLight } from './ambientLight.js';
import { buildingMovement } from './buildingMovement.js';
import { cleaned } from './cleaned.js';
import { condensation } from './condensation.js';
import { contamination } from './contamination.js';
import { dataGap } from './dataGap.js';
import { electricalNoise } from './electricalNoise.js';
import { misalignmentDrift } from './misalignmentDrift.js';
import { misalignmentStep } from './misalignmentStep.js';
import { obstruction } from './obstruction.js';
import { processAerosol } from './processAerosol.js';
import { smokeLike } from './smokeLike.js';
import { vibration } from './vibration.js';

/** All causes. Smoke is decided first and stands whatever else is found. */
export const causes: readonly Cause[] = [
  smokeLike,
  contamination,
  misalignmentStep,
  misalignmentDrift,
  buildingMovement,
  obstruction,
  condensation,
  processAerosol,
  ambientLight,
  vibration,
  electricalNoise,
  dataGap,
  cleaned,
];
