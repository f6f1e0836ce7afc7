/* The answers of the library's questions, as the JSON outputs hold them. */

export type CauseWord =
  | 'contamination'
  | 'misalignment-step'
  | 'misalignment-drift'
  | 'building-movement'
  | 'obstruction'
  | 'condensation'
  | 'process-aerosol'
  | 'ambient-light'
  | 'vibration'
  | 'electrical-noise'
  | 'data-gap'
  | 'smoke-like'
  | 'cleaned';
export type Severity = 'note' | 'watch' | 'act';

export interface ToldEvidence {
  readonly measure: string;
  readonly value: number;
  readonly unit: string;
}

export interface ToldFinding {
  readonly cause: CauseWord;
  readonly start: string;
  readonly end: string;
  readonly ongoing: boolean;
  readonly confidence: number;
  readonly severity: Severity;
  readonly summary: string;
  readonly evidence: readonly ToldEvidence[];
  readonly action: string;
  readonly settles: string;
  readonly episodes?: readonly (readonly [string, string])[];
  readonly during?: string;
}

export interface ToldForecast {
  readonly obscuration: number;
  readonly ends: 'alarm' | 'compensation-limit';
  readonly median: string;
  readonly low: string;
  readonly high: string | null;
}

export interface ToldBeam {
  readonly id: string;
  readonly from: string | null;
  readonly to: string | null;
  readonly samples: number;
  readonly findings: readonly ToldFinding[];
  readonly forecast: ToldForecast | null;
  readonly assumed: readonly string[];
}

export interface InputReport {
  readonly lines: number;
  readonly dropped: number;
  readonly notes: readonly {
    readonly line: number;
    readonly lines: number;
    readonly what: string;
    readonly file?: string;
  }[];
}

export interface Diagnosis {
  readonly format: 'beamkeep-diagnosis/1';
  readonly beams: readonly ToldBeam[];
  readonly input: InputReport;
}

export interface ToldChange {
  readonly time: string;
  readonly state: 'normal' | 'fire' | 'fault';
}

export interface Response {
  readonly format: 'beamkeep-response/1';
  readonly beams: readonly {
    readonly id: string;
    readonly changes: readonly ToldChange[];
    readonly assumed: readonly string[];
  }[];
}
