import { strToU8 } from 'fflate';
import { clockStretch } from '../clocks/index.js';
import { timeReader } from './civilTime.js';
import type { LogHead } from './head.js';
import { clockCell, type LinePlan, timeCell } from './linePlan.js';

/**
 * Earliest time among the first lines of a file [ms since 1970-01-01 UTC]: tells in which order files follow each
 * other. Minus infinity where none can be read.
 */
export function firstTime({ lines }: LogHead, { actions, format, decimalComma }: LinePlan, zone: string): number {
  const reader = timeReader(format, decimalComma);
  const date = actions.indexOf(timeCell);
  const clock = actions.indexOf(clockCell);
  let first = Number.POSITIVE_INFINITY;
  for (const cells of lines) {
    const text = strToU8(clock < 0 ? (cells[date] ?? '') : `${cells[date]} ${cells[clock]}`);
    if (!reader.read(text, 0) || reader.end !== text.length) continue;
    const { time } = reader;
    first = Math.min(first, reader.local ? time - clockStretch(zone, time).offset : time);
  }
  return Number.isFinite(first) ? first : Number.NEGATIVE_INFINITY;
}
