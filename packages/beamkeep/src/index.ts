export { type AimQuestion, aim } from './aim.js';
export { decibelsToPercent, opticalPath, percentToDecibels, type Unit, units } from './attenuation/index.js';
export { UsageError } from './columns/index.js';
export {
  type AimJson,
  type CommissioningDay,
  type CommissioningRecord,
  type CoveredJson,
  type ProofJson,
  type ProofPlanJson,
  type ProofSheet,
  parseDay,
  parseProofSheet,
  parseRecord,
  recordPage,
  type ThresholdsJson,
  usualSteps,
} from './commissioning/index.js';
export { type Conversion, type ConvertQuestion, convert } from './convert.js';
export { covered } from './covered.js';
export {
  type BeamDiagnosisJson,
  type ClockJson,
  type DiagnoseQuestion,
  type Diagnosis,
  type DiagnosisJson,
  diagnose,
  diagnosisOf,
  type EventJson,
  type FindingJson,
  type ForecastJson,
  type RunnerUpJson,
} from './diagnose.js';
export {
  type BeamExplanationJson,
  type CauseThenJson,
  type CourseJson,
  type ExplainQuestion,
  type ExplanationJson,
  explain,
  explanationOf,
  type RecurrenceJson,
} from './explain.js';
export {
  type InputNote,
  type InputReport,
  type LogSource,
  logOfText,
  type PanelList,
  panelEntries,
  type ReadOptions,
  type TextTable,
  textTable,
} from './log/index.js';
export { type PlanAnswer, type PlanRequest, plan } from './plan.js';
export { type ProofQuestion, proofPlan, prove } from './prove.js';
export { type DayFiles, record } from './record.js';
export { type BeamResponseJson, type ChangeJson, type ResponseJson, respond } from './respond.js';
export { type Beam, parseSite, type Site } from './site/index.js';
export { type ThresholdsQuestion, thresholds } from './thresholds.js';
export { type TradeOffJson, type TradeOffOptions, tradeOff, usualDelays, usualThresholds } from './tradeoff.js';
