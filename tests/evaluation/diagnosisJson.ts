import type { CauseWord, Severity } from '../../packages/beamkeep/src/diagnosis/finding.js';

/** The part of a finding, as the JSON output holds it, that the comparison looks at. */
export interface StatedFinding {
  readonly cause: CauseWord;
  readonly start: string;
  readonly end: string;
  readonly confidence: number;
  readonly severity: Severity;
}

/** Days, as YYYY-MM-DD. */
export interface StatedForecast {
  readonly median: string;
  readonly low: string;
  readonly high: string | null;
}

/** The part of the JSON output of `diagnose` that the comparison looks at. */
export interface StatedDiagnosis {
  readonly beams: readonly {
    readonly id: string;
    readonly findings: readonly StatedFinding[];
    readonly forecast: StatedForecast | null;
  }[];
}
