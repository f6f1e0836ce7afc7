import { UsageError } from '../columns/index.js';
import { quoted, type Site } from '../site/index.js';
import type { LogHead } from './head.js';
import { theOnly } from './theOnly.js';

/**
 * In which cells of a line time stands: the first one, or those that the site names.
 *
 * @returns `clock` is less than 0 where time stands in one cell
 */
export function timePlace(head: LogHead, { timeColumn }: Site): { readonly time: number; readonly clock: number } {
  if (timeColumn === undefined) return { time: 0, clock: -1 };
  const [date, clock] = typeof timeColumn === 'string' ? [timeColumn] : timeColumn;
  if (date === clock) throw new UsageError(`timeColumn: ${quoted(date)} is named twice`);
  return {
    time: theOnly(head, date, 'timeColumn'),
    clock: clock === undefined ? -1 : theOnly(head, clock, 'timeColumn'),
  };
}
