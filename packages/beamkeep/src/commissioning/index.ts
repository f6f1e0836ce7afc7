export { type AimMargin, aimMargin } from './aim/aimMargin.js';
export {
  type AimScan,
  type AimScanOptions,
  type AngleUnit,
  aimScanOf,
  angleUnits,
  inDegrees,
  type NumberRows,
} from './aim/aimScan.js';
export { type AimFacts, type AimWords, aimWords, flagWords } from './aim/aimWords.js';
export { estimated } from './aim/estimated.js';
export { type ScanQuestion, type ScanReport, scanReport } from './aim/scanReport.js';
export { type Structure, type StructureMove, structureMoves } from './aim/structureMoves.js';
export { type AimJson, aimAnswer, type EstimateJson, type MarginJson } from './answers/aimAnswer.js';
export { type CoveredJson, type CoveredStretchJson, coveredAnswer, type ReachJson } from './answers/coveredAnswer.js';
export {
  type ExpectedJson,
  type ProofJson,
  type ProofPlanJson,
  planAnswer,
  proofAnswer,
  type StepJson,
} from './answers/proofAnswer.js';
export {
  type BeamThresholdsJson,
  beamThresholds,
  type LimitJson,
  type ThresholdJson,
  type ThresholdsJson,
  type WallQuestion,
} from './answers/thresholdsAnswer.js';
export { type Caution, everyCaution, type Stage, stageCautions, stages } from './cautions.js';
export { type CoverScale, coverScale, widestPrint } from './cover/coverScale.js';
export type { CoverMark, CoverWay } from './cover/scaleDrawing.js';
export { type CleanDrift, type CoveredStretch, type CoveredTest, coveredTest } from './covered/coveredTest.js';
export { type CoveredWords, coveredWords } from './covered/coveredWords.js';
export { type Reach, reachOf } from './covered/reach.js';
export { type TestReadings, type TestStretches, testStretches } from './covered/testStretches.js';
export { instantOut, type NumberOut, numberIn, numberOut } from './documents/numbersOut.js';
export { readDocument } from './documents/readDocument.js';
export { evenRows } from './evenRows.js';
export { recordPage } from './page/recordPage.js';
export { type Excursion, type Excursions, excursions, type TestObscuration } from './proof/excursions.js';
export { type ExpectedStep, expectedSteps, lightingOf } from './proof/expected.js';
export { type NamedRows, panelList } from './proof/panelList.js';
export { type Proof, type ProofLog, proofOf } from './proof/proofOf.js';
export { mustShow, proofVerdictWords } from './proof/proofWords.js';
export {
  type ProofSheet,
  type ProofStep,
  parseProofSheet,
  type ReflectorSize,
  type StepWord,
} from './proof/step.js';
export type { PanelEvent, StepResult } from './proof/stepResult.js';
export { usualSteps } from './proof/usualSteps.js';
export type { CommissioningRecord, FindingOut, PointOut } from './record/commissioningRecord.js';
export { type CommissioningDay, type DayBeam, parseDay } from './record/day.js';
export { type BeamAnswers, type RecordPieces, recordOf } from './record/recordOf.js';
export { parseRecord, recordSchema } from './record/recordSchema.js';
export { type ThinTrace, thinned } from './thinned.js';
export { type DirtShift, dirtShift, usualDirt } from './thresholds/dirtShift.js';
export { everyUnit, type ThresholdInUnits } from './thresholds/everyUnit.js';
export { type StandardLimit, standardLimits } from './thresholds/standardLimits.js';
export { usualSeparations, usualThresholds, type WallTable, wallTable } from './thresholds/wallTable.js';
