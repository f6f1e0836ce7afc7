export { type Air, densityWarmer, hallAir } from './air.js';
export { type JetBeam, type JetFire, type JetPiece, jetExtinction, jetPieces } from './beam/jetLoss.js';
export { plumeDepth } from './beam/plumeLoss.js';
export {
  type LayerArrival,
  layerArrivals,
  plumeTop,
  type SceneBeam,
  type SmokeCurve,
  type SmokeScene,
  smokeOnBeam,
  smokeStages,
} from './beam/smokeOnBeam.js';
export { type CeilingJet, ceilingJet, jetDepth, jetFire } from './ceiling/ceilingJet.js';
export { riseTime } from './ceiling/riseTime.js';
export { leastFire, riseHeight, warmestLayer, warmestRoof } from './ceiling/stratification.js';
export { type TransportLag, transportLag } from './ceiling/transportLag.js';
export { zoneModelJet, zoneModelJoin } from './ceiling/zoneModelJet.js';
export {
  convective,
  curveFire,
  type DesignFire,
  type Growth,
  type HeatPoint,
  type Smoulder,
  smoulderingFire,
  squaredFire,
  steadyFire,
} from './fire/designFire.js';
export { doublingTime } from './fire/doublingTime.js';
export { type Fuel, fuelNamed, fuelNames, type OwnFuel, ownFuel, type Spanned } from './fire/fuel.js';
export {
  type GrowthClass,
  growthClasses,
  growthCoefficient,
  growthDefinitions,
  growthNamed,
  growthTime,
} from './fire/growth.js';
export { heatPoints } from './fire/heatPoints.js';
export { type Hall, layerFilling, lifts, type SmokeLayer } from './layer.js';
export { type LayerSpread, layerSpread } from './layerSpread.js';
export { type Place, places, plumeBeside } from './plume/besideWalls.js';
export { cornerFlameHeight, flameHeight, smallFlameHeight, wallFlameHeight } from './plume/flameHeight.js';
export {
  axisRise,
  fastestFactor,
  flowFactor,
  flowOffset,
  type Plume,
  type PlumeFire,
  plumeAt,
  riseFactor,
  volumeFlow,
} from './plume/heskestad.js';
export { type AxisByRegion, axisByRegion } from './plume/mccaffrey.js';
export { effectiveDiameter, virtualOrigin } from './plume/origin.js';
export { type PointPlume, pointPlume } from './plume/pointPlume.js';
export { leftOut, outOfReach, whoDecides } from './reach.js';
export { type ElementFire, heatElementTime } from './spot/heatElement.js';
export { chamberDelay, chamberShare, type PointDetector } from './spot/pointDetector.js';
