export { gravity, usualAir } from './air.js';
export {
  chineseThreshold,
  cleanDrift,
  coverTolerance,
  filterTolerance,
  flankLoss,
  movementShare,
  quietFilterHold,
  residueCaution,
  residueRatio,
  russianThreshold,
  signalAllowance,
} from './commissioning.js';
export {
  growthHeat,
  growthHeatRound,
  growthTimes,
  loneYieldFactor,
  radiativeShare,
  smoulderingHeat,
  smoulderingYield,
  usualDiameter,
  usualSmoulder,
} from './fires.js';
export { fuels } from './fuels.js';
export { bs5839, gb50116, nfpa72, nfpa72Peak, placedBelowCeiling, sp484, tariffAdvisory } from './layout.js';
export {
  filledRangePower,
  gaussianHalfWidth,
  halfPowerLoss,
  overfilledRangePower,
  pointingFactor,
  pointingReach,
  twoLobes,
  usualWavelength,
} from './light.js';
export { aerosolExtinction, dustLimits, fogVisibility, largeDropEfficiency } from './nuisance.js';
export {
  ceilingJetDepth,
  ceilingJetReach,
  ceilingJetRise,
  ceilingJetSpeed,
  cornerFlame,
  firstSmoke,
  flameFlow,
  flameHeight,
  gradientRise,
  greatestRise,
  greatestSpeed,
  layerShape,
  leastWarmth,
  mccaffrey,
  mirrorImages,
  plumeFlow,
  plumeFlowOfAir,
  plumeRadius,
  plumeRise,
  plumeSpeed,
  plumeWidth,
  pointPlumeFlow,
  pointPlumeRise,
  riseTime,
  smallFlame,
  stratification,
  transportLag,
  virtualOrigin,
  visiblePlumeWidth,
  wallFlame,
  warmRoofDepth,
  zoneModelJet,
} from './plume.js';
export {
  alarmFilter,
  compensationRatio,
  leastPointThreshold,
  leastSeparation,
  leastThreshold,
  quietFilter,
  rapidDeepLoss,
  rapidPartialLoss,
  reproducibilityAbove,
  reproducibilityBelow,
  slowestFireRate,
  slowFireAllowance,
  slowFireFactor,
  smoulderingTestEnd,
  thresholdRatio,
} from './response.js';
export {
  blockedFrom,
  blockedWithin,
  stoppingGap,
  usualAlarmDelay,
  usualAlarmThreshold,
  usualFaultDelay,
  usualFaultThreshold,
} from './settings.js';
export {
  flamingExtinction,
  flamingExtinctionOlder,
  infraredShare,
  laboratoryWavelength,
  smoulderingExtinction,
  wavelengthPower,
} from './smoke.js';
export { quickestFill, smoulderDoubling } from './smokeCurves.js';
export { slowestSmoke, smokeActShare, smokeClear, smokeEpisodeSpare, smokeGrowth, smokeSamples } from './smokeRule.js';
export { cleaningRule, mirrorDirtRate, mostDirtRate, panelDirtRate } from './soiling.js';
export type { Source, Sourced, Topic } from './sourced.js';
export { chamberDelays, chamberLength, pointAlarm } from './spotDetectors.js';
export { normalOverMad, roundingSpread } from './spread.js';
export { deflectionLimits, endSlope, frameDrift, roofTemperature, thermalExpansion } from './structure.js';
export { testFireEnd } from './testFires.js';
export { britishThermalUnit, foot, naturalPerDecimal } from './units.js';
export {
  clearestAir,
  lightEmittingSign,
  olderVisibleContrast,
  reflectingSign,
  tenableDensity,
  visibleContrast,
} from './visibility.js';
