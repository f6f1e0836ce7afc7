export { lobeAngle, lobeLoss, pointingLoss, superGaussianLoss } from './lobe.js';
export { type Estimate, type MovementFit, type MovementOptions, movementFit } from './movementFit.js';
export { angleToSun, type SunPosition, type SunPositions, sunPosition, sunPositions } from './sun.js';
export { type SwayAim, type SwayHarmonics, swayAim, swayHarmonics } from './sway.js';
