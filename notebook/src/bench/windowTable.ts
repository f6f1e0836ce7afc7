import { rowAt, type Trace } from 'beamkeep/columns';
import type { TableRow, Window } from './reading.js';

/**
 * A window of a trace as a table of equal stretches, for whoever reads numbers rather than lines.
 *
 * @param trace the beam's trace
 * @param window the stretch of time
 * @param rows how many stretches
 */
export function windowTable(trace: Trace, { from, to }: Window, rows: number): TableRow[] {
  const step = (to - from) / rows;
  return Array.from({ length: rows }, (_, i) => {
    const start = from + i * step;
    const end = start + step;
    let low = Number.NaN;
    let high = Number.NaN;
    let sum = 0;
    let count = 0;
    const last = i === rows - 1 ? rowAt(trace.time, end + 1) : rowAt(trace.time, end);
    for (let row = rowAt(trace.time, start); row < last; row++) {
      if (!((trace.low[row] as number) >= low)) low = trace.low[row] as number;
      if (!((trace.high[row] as number) <= high)) high = trace.high[row] as number;
      sum += (trace.level[row] as number) * (trace.count[row] as number);
      count += trace.count[row] as number;
    }
    return { from: start, to: end, low, middle: sum / count, high };
  });
}
