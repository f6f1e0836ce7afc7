// The entry `beamkeep/planning`: will this path work, what does a setting cost; and the room behind these questions.
export { type PlanAnswer, type PlanRequest, plan } from './plan.js';
export * from './planning/index.js';
export {
  type BeamNuisance,
  type CountedNuisance,
  countNuisance,
  type TradeOffJson,
  type TradeOffOptions,
  tradeOff,
  tradeOffCounted,
  triedSettings,
  usualDelays,
  usualThresholds,
} from './tradeoff.js';
