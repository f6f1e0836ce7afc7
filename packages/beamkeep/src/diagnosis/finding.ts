/*
 * What a diagnosis says, in the words of the JSON output. Times are instants [ms since 1970-01-01 UTC] here and ISO
 * strings in the output.
 */

/** The words for a cause; never renamed. */
export const causeWords = [
  'contamination',
  'misalignment-step',
  'misalignment-drift',
  'building-movement',
  'obstruction',
  'condensation',
  'process-aerosol',
  'ambient-light',
  'vibration',
  'electrical-noise',
  'data-gap',
  'smoke-like',
  'cleaned',
] as const;
/** One of `causeWords`. */
export type CauseWord = (typeof causeWords)[number];

/** The reader's duty: know it, plan it, go (or treat as fire). */
export const severities = ['note', 'watch', 'act'] as const;
/** One of `severities`. */
export type Severity = (typeof severities)[number];

/** A number that a person can check against the plot. */
export interface Evidence {
  readonly measure: string;
  readonly value: number;
  readonly unit: string;
}

/** One cause at work on one beam over one stretch. */
export interface Finding {
  readonly cause: CauseWord;
  /** Instant of the first sample of the stretch [ms]. */
  readonly start: number;
  /** Instant of the last sample of the stretch [ms]. */
  readonly end: number;
  /** Whether it still holds at the end of the log. */
  readonly ongoing: boolean;
  /** Probability that this cause is at work on this beam within this stretch. */
  readonly confidence: number;
  readonly severity: Severity;
  /** One sentence for a person. */
  readonly summary: string;
  readonly evidence: readonly Evidence[];
  /** What to do on site. */
  readonly action: string;
  /** What would prove or refute it. */
  readonly settles: string;
  /** Of a recurring cause: first and last sample of each time it came [ms]. */
  readonly episodes?: readonly (readonly [number, number])[];
  /** The work of a visit that covers the finding. */
  readonly during?: string;
}
