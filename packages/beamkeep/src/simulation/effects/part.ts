import type { CauseWord } from '../truth/causeWord.js';

/** A stretch of time, both ends included [ms]. */
export interface Window {
  readonly from: number;
  readonly to: number;
}

/** What one effect does to one beam's light, sample by sample. An effect fills in what it changes. */
export interface Part<Plan extends { readonly effect: string }> {
  readonly effect: Plan;
  readonly cause: CauseWord;
  /** Each time it comes. */
  readonly windows: readonly Window[];
  /** Loss of light [dB]. */
  readonly loss?: Float32Array;
  /** Turn of the head, sideways and upwards [half-angles]. */
  readonly turn?: readonly [Float32Array, Float32Array];
  /** What it adds to the received level [share of clean air]. */
  readonly light?: Float32Array;
  /** Change of the equipment's gain [dB]: not light at all. */
  readonly gain?: Float32Array;
  /** 1 where the sample is not logged. */
  readonly missing?: Uint8Array;
  /** 1 where the reading before is held. */
  readonly held?: Uint8Array;
}
