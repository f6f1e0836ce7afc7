import type { BeamRecord } from 'beamkeep/columns';
import { csvCell } from '../parts/csvCell.js';

/** Rows that are put into words at a time. */
const rowsAtATime = 20_000;

const columns = ['beam', 'from', 'to', 'samples', 'level %', 'low %', 'high %', 'spread %'] as const;

/** A share of clean air in percent, to a thousandth. */
const percent = (share: number): string => (100 * share).toFixed(3);

/**
 * The log as this sheet reckons with it, as a table (CSV): a line for every quiet minute, one for every sample where
 * something happens. Levels are percent of clean air, times UTC; `low` and `high` are the extremes of the line's samples.
 *
 * @returns the text in pieces, so that a long log is never one string
 */
export function* reducedLog(records: Iterable<BeamRecord>): Generator<string> {
  yield `${columns.join(',')}\r\n`;
  for (const { id, trace } of records) {
    const beam = csvCell(id);
    const { time, until, level, low, high, spread, count } = trace;
    for (let first = 0; first < time.length; first += rowsAtATime) {
      const lines: string[] = [];
      for (let row = first; row < Math.min(time.length, first + rowsAtATime); row++) {
        const instants = [time[row], until[row]].map((instant) => new Date(instant as number).toISOString());
        const shares = [level[row], low[row], high[row], spread[row]].map((share) => percent(share as number));
        lines.push([beam, ...instants, count[row], ...shares].join(','));
      }
      yield `${lines.join('\r\n')}\r\n`;
    }
  }
}
