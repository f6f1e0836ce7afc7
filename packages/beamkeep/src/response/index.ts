export { type AlarmGrid, alarmGrid, type Grid, type GridAxes, type GridCell, type GridCounter } from './alarmGrid.js';
export {
  type BeamMemory,
  type BeamResponder,
  beamResponder,
  type ResponseOptions,
  slowGainOf,
} from './beamResponder.js';
export { reached } from './blockWatch.js';
export { compensationBound } from './compensationBound.js';
export { equipmentObscuration, largestObscuration, readingObscuration } from './equipmentObscuration.js';
export { poissonInterval } from './poissonInterval.js';
export { resetsOf } from './resetsOf.js';
export {
  type Change,
  type DetectorState,
  isGap,
  type Responder,
  type ResponderMemory,
  type ResponseCircumstances,
  type ResponseSettings,
  responder,
} from './responder.js';
export { type Response, respondTo } from './respondTo.js';
export { respondToTrace, type TraceResponse } from './respondToTrace.js';
export { slowFireLimit } from './slowFireLimit.js';
export { type SlowGain, type SlowGainMemory, type SlowGainSettings, slowGain } from './slowGain.js';
export { reproducibility, thresholdRatio } from './thresholdSpread.js';
