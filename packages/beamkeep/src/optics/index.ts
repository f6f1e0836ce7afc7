export { aimLoss } from './aim/aimLoss.js';
export { fitLobe, fitLobeTwoAxes, type LobeAxis, type LobeFit, type LobeOptions } from './aim/fitLobe.js';
export { type Angles, type Lobe, lobeLevel, offPeak } from './aim/lobeModel.js';
export type { ScanFlag, ScanFlagKind } from './aim/scanFlags.js';
export type { StrayLobe } from './aim/strayLobe.js';
export {
  coverFromEdge,
  coverFromMiddle,
  coverObscuration,
  edgeInSpot,
  edgeOnDisc,
  type Lighting,
  type Reflector,
  type Strip,
} from './cover.js';
export type { Estimate } from './estimate.js';
export { apertureShare, type SpotWidths, spotWidths } from './gaussianBeam.js';
export { type JitterLoss, jitterOneAxis, jitterTwoAxes, type PointingError, pointingError } from './jitter.js';
export { lobeAngle, lobeLoss, pointingLoss, superGaussianLoss } from './lobe.js';
export { type MovementFit, type MovementOptions, movementFit } from './movementFit.js';
export { geometricLoss, type RangeRegime, type Retroreflection, rangeLoss, retroreflection } from './range.js';
export {
  angleOfDisplacement,
  type Bend,
  type Drift,
  deflection,
  displacementOfAngle,
  drift,
  type Turn,
  thermalBow,
  thermalGrowth,
} from './structure.js';
export { angleToSun, type SunPosition, type SunPositions, sunPosition, sunPositions } from './sun.js';
export { type SwayAim, type SwayHarmonics, swayAim, swayHarmonics } from './sway.js';
export { type FilterLoss, filterLoss } from './testFilter.js';
