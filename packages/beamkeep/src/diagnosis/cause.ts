import type { CauseWord, Evidence, Severity } from './finding.js';
import type { Picture } from './picture.js';

/** A stretch that a cause claims, before it is put into words. */
export interface Claim {
  /** Instants of the first and last sample [ms]. */
  readonly start: number;
  readonly end: number;
  /** First and last sample of each time it came, for what recurs [ms]. */
  readonly episodes?: readonly (readonly [number, number])[];
  /** How clearly the signs of the cause are there, 0 to 1: a plain score, which the weighing makes a probability. */
  readonly confidence: number;
  readonly severity: Severity;
  /** One sentence for a person. */
  readonly summary: string;
  readonly evidence: readonly Evidence[];
  /** Where the stretch changes what the usual advice would be. */
  readonly action?: string;
  readonly settles?: string;
}

/**
 * What other beams tell of a cause on one: nothing, as of a knock; that they show it at the same times, as what comes over
 * the hall through its air, structure or supply does; or, by staying clean for as long, that a slow loss is hardly dirt.
 */
export type OtherBeams = 'tell nothing' | 'show it too' | 'doubt it if clean';

/** Everything beamkeep knows about one cause. Nothing outside its file knows a cause by name. */
export interface Cause {
  /** The word in the JSON output: never renamed. */
  readonly word: CauseWord;
  /** One line for help texts and the page of causes. */
  readonly meaning: string;
  /** How it shows in the received signal. */
  readonly shows: string;
  /** What the other beams of the hall tell of it. */
  readonly otherBeams: OtherBeams;
  /** What to do on site. */
  readonly action: string;
  /** What would settle the doubt. */
  readonly settles: string;
  /** The stretches of a beam that the cause claims. */
  claims(picture: Picture): Claim[];
}
