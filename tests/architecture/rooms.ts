/*
 * The rooms of the library and the rows they stand on. A row imports from the rows below it: never up, never sideways.
 * To add a room: a line here, its folder with an `index.ts`, then `npm run draw`.
 */

/** A topic of the library: a folder of `packages/beamkeep/src`. */
export interface Room {
  readonly name: string;
  /** 0 at the bottom. */
  readonly row: number;
  /** What an engineer finds in it. */
  readonly holds: string;
}

/** Row of the files that answer one question of the engineer each, and of `index.ts` and `node.ts`. */
export const questionRow = 5;

/** Every room, from the bottom up. */
export const rooms: readonly Room[] = [
  { name: 'columns', row: 0, holds: 'typed-array columns, spans, instants, `UsageError`' },
  { name: 'numbers', row: 0, holds: 'the constants, each with value, spread, unit and source' },
  { name: 'clocks', row: 1, holds: 'wall clocks of IANA zones: offsets, their changes, hours skipped and doubled' },
  { name: 'attenuation', row: 1, holds: 'every unit of obscuration, Beer-Lambert, the optical path' },
  { name: 'statistics', row: 1, holds: 'robust middle and spread, trends, changes, spectra' },
  { name: 'site', row: 2, holds: 'the site file: schema, defaults, checks' },
  { name: 'optics', row: 2, holds: 'lobe, aim, movement, reflector, range, place of the sun' },
  { name: 'response', row: 3, holds: 'threshold, delay, latching: what the equipment decides' },
  { name: 'smoke', row: 3, holds: 'design fires, plume, layer, obscuration of a beam' },
  { name: 'log', row: 4, holds: 'text to columns, calendars, gaps, mending; readings to shares of clean air' },
  { name: 'diagnosis', row: 4, holds: 'summaries, `causes/` (one file a cause), weighing, findings' },
  { name: 'moments', row: 4, holds: "the panel's list beside the log; what a beam did at a time, what recurs then" },
  { name: 'forecast', row: 4, holds: 'margin and the day it is gone; takes series and spans, not findings' },
  { name: 'commissioning', row: 4, holds: 'aim scan, covered test, proofs, the record' },
  { name: 'planning', row: 4, holds: 'coverage, clearances, range budget by rule set' },
  { name: 'simulation', row: 4, holds: 'seeded logs with their truth, `effects/` (one file an effect)' },
];

/** Installed packages that calculate: they belong to one room, so that their traps are met in one place. */
export const numericPackages = /^(fft-js|simple-statistics|ml-.*)$/;
export const numericRoom = 'statistics';

/** The files that touch Node modules: the entry of Node, and the thread on which it reads. */
export const nodeFiles: readonly string[] = ['node.ts', 'rowsThread.ts', 'threadedRows.ts'];

/** What the question files leave alone: what makes practice logs shares no code with what explains them. */
export const notForQuestions = 'simulation';
