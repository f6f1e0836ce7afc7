import type { Compensation } from './site.js';
import type { beamKeys, SiteKey, topKeys, visitKeys } from './siteKeys.js';

/*
 * A site file as written: every key of the right kind, nothing filled in. The types follow from the table of keys.
 */

type ValueOf<K extends SiteKey> = {
  text: string;
  zone: string;
  instant: string;
  number: number;
  flag: boolean;
  word: K extends { readonly words: readonly (infer Word)[] } ? Word : never;
  columns: string | readonly [string, string];
  compensation: Compensation;
  list: readonly unknown[];
}[K['kind']];

type Written<Keys extends Readonly<Record<string, SiteKey>>> = {
  readonly [K in keyof Keys as Keys[K]['required'] extends true ? K : never]: ValueOf<Keys[K]>;
} & {
  readonly [K in keyof Keys as Keys[K]['required'] extends true ? never : K]?: ValueOf<Keys[K]> | undefined;
};

/** A beam as written. */
export type BeamAsWritten = Written<typeof beamKeys>;
/** A visit as written. */
export type VisitAsWritten = Written<typeof visitKeys>;
/** A site file as written. */
export type SiteAsWritten = Omit<Written<typeof topKeys>, 'beams' | 'visits'> & {
  readonly beams: readonly BeamAsWritten[];
  readonly visits?: readonly VisitAsWritten[] | undefined;
};
