import type { TimeFormat } from '../site/index.js';

/** What to do with a cell; 0 or more: the column that takes its number. */
export const skipped = -1;
/** The cell holds the time, or the date where time stands in two cells. */
export const timeCell = -2;
/** The cell holds the time of day. */
export const clockCell = -3;
/** Long form: the cell holds the name of the reading. */
export const nameCell = -4;
/** Long form: the cell holds the reading. */
export const valueCell = -5;

/** How the lines of one file are read. */
export interface LinePlan {
  /** Byte between cells. */
  readonly separator: number;
  /** Whether a comma can mark decimals. */
  readonly decimalComma: boolean;
  /** What to do with each cell of a line. */
  readonly actions: Int32Array;
  readonly format: TimeFormat;
  /** Columns that this file does not hold. */
  readonly absent: readonly number[];
  /** Long form: the column of a reading's name; undefined where it is not wanted. */
  readonly columnOf?: (name: string, line: number) => number | undefined;
}
