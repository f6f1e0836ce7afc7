import { UsageError } from '../columns/index.js';
import { quoted } from './quoted.js';

/** Ends the reading of a site file: says where, what was wrong, and what to do. */
export type Refuse = (place: string, message: string) => never;

/** A `Refuse` that names the file first: `depot.json: beams[1] "B2": message`. */
export const refusing =
  (fileName: string): Refuse =>
  (place, message) => {
    throw new UsageError([fileName, place, message].filter((part) => part !== '').join(': '));
  };

/** Where a beam stands: `beams[1] "B2"`, or `beams[1]` where it has no name. */
export const placeOfBeam = (row: number, beam: unknown): string => {
  const id = typeof beam === 'object' && beam !== null && 'id' in beam ? beam.id : undefined;
  return `beams[${row}]${typeof id === 'string' ? ` ${quoted(id)}` : ''}`;
};

/** Where a visit stands: `visits[0]`. */
export const placeOfVisit = (row: number): string => `visits[${row}]`;
