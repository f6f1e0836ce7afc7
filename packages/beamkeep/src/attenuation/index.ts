export { converted } from './converted.js';
export { apparentObscuration, levelToReading, readingToLevel } from './covered.js';
export { deciview } from './deciview.js';
export { extinctionAt } from './extinctionAt.js';
export { type EvenStretch, lossAlong } from './lossAlong.js';
export { obscuration } from './obscuration.js';
export { crossings, type Layout, opticalPath } from './opticalPath.js';
export { overPath } from './overPath.js';
export {
  decibelsToLevel,
  decibelsToPercent,
  levelToDecibels,
  levelToPercent,
  percentToDecibels,
  percentToLevel,
} from './reading.js';
export { type SmokeEquivalent, smokeEquivalent } from './smokeEquivalent.js';
export { extinctionToSoot, type SmokeKind, sootToExtinction, specificExtinction } from './soot.js';
export { type Unit, unitNamed, units } from './unit.js';
export { opticalRange, visibility, visualRange, visualRangeToExtinction } from './visibility.js';
