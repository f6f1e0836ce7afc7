export type { Cause, Claim } from './cause.js';
export { causes } from './causes/index.js';
export { type BeamStanding, beamStanding, type StandingDays, type StandingFinding } from './comparison/beamStanding.js';
export {
  type Change,
  type ComparedBeam,
  type ComparedFinding,
  changeOf,
  comparedBeam,
  type FindingFate,
} from './comparison/comparedBeam.js';
export { type BeamDiagnosis, diagnoseBeams } from './diagnoseBeams.js';
export { type CauseWord, causeWords, type Evidence, type Finding, type Severity, severities } from './finding.js';
export { type LocalClock, localClock } from './localClock.js';
export { beforeTests, type Double, type Parting, partingOf, partings, partingsWith } from './partings.js';
export type { Picture } from './picture.js';
export { type RunnerUp, runnerUp } from './runnerUp.js';
export { type Trend, trend } from './trend.js';
