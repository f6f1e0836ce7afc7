/** A number as JSON has it: null where it is not known, a word where it has no end. */
export type NumberOut = number | 'infinite' | null;

/** JSON has no word for what is missing or without end: null, and "infinite". */
export const numberOut = (value: number): NumberOut =>
  Number.isNaN(value) ? null : Number.isFinite(value) ? value : 'infinite';

/** An instant as ISO 8601 in UTC; null where it is not known. */
export const instantOut = (instant: number): string | null =>
  Number.isNaN(instant) ? null : new Date(instant).toISOString();

/** The number that `numberOut` wrote. */
export const numberIn = (written: NumberOut): number =>
  written === null ? Number.NaN : written === 'infinite' ? Number.POSITIVE_INFINITY : written;
