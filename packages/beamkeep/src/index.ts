export { decibelsToPercent, opticalPath, percentToDecibels, type Unit, units } from './attenuation/index.js';
export { UsageError } from './columns/index.js';
export { type Conversion, type ConvertQuestion, convert } from './convert.js';
export {
  type BeamDiagnosisJson,
  type ClockJson,
  type DiagnoseQuestion,
  type Diagnosis,
  type DiagnosisJson,
  diagnose,
  diagnosisOf,
  type EventJson,
  type EventsJson,
  type FindingJson,
  type ForecastJson,
  type JoinableList,
  type RunnerUpJson,
  type SecondCause,
} from './diagnose.js';
export {
  type InputNote,
  type InputReport,
  type LogSource,
  logOfText,
  type PanelList,
  type ReadOptions,
} from './log/index.js';
export { type BeamResponseJson, type ChangeJson, type ResponseJson, respond } from './respond.js';
export { type Beam, parseSite, type Site } from './site/index.js';
