// The entry `beamkeep/planning`: will this path work, what does a setting cost; and the room behind these questions.
export { type PlanAnswer, type PlanRequest, plan } from './plan.js';
export * from './planning/index.js';
export { type TradeOffJson, type TradeOffOptions, tradeOff, usualDelays, usualThresholds } from './tradeoff.js';
