export { type AimQuestion, aim } from './aim.js';
export { UsageError } from './columns/index.js';
export {
  type AimJson,
  type CoveredJson,
  type ProofJson,
  type ProofPlanJson,
  type ProofSheet,
  parseProofSheet,
  type ThresholdsJson,
  usualSteps,
} from './commissioning/index.js';
export { type Conversion, type ConvertQuestion, convert } from './convert.js';
export { covered } from './covered.js';
export {
  type BeamDiagnosisJson,
  type Diagnosis,
  type DiagnosisJson,
  diagnose,
  diagnosisOf,
  type FindingJson,
  type ForecastJson,
} from './diagnose.js';
export {
  type InputNote,
  type InputReport,
  type LogSource,
  logOfText,
  type ReadOptions,
  type TextTable,
  textTable,
} from './log/index.js';
export { type PlanAnswer, type PlanRequest, plan } from './plan.js';
export { type ProofQuestion, proofPlan, prove } from './prove.js';
export { type BeamResponseJson, type ChangeJson, type ResponseJson, respond } from './respond.js';
export { type Beam, parseSite, type Site } from './site/index.js';
export { type ThresholdsQuestion, thresholds } from './thresholds.js';
export { type TradeOffJson, type TradeOffOptions, tradeOff, usualDelays, usualThresholds } from './tradeoff.js';
