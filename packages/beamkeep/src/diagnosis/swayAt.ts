import { hour, type Stretch } from '../columns/index.js';
import { cellAt } from './cells.js';
import type { Unsorted } from './picture.js';
import { swing } from './takeApart.js';
import { levelOf, tenLog } from './view.js';

/** Swing of the daily cycle about a stretch, share of clean air. */
export function swayAt({ parts }: Unsorted, { start, end }: Stretch): number {
  if (!parts.cycleFitted) return 0;
  const { cells, cycle, slow } = parts;
  const at = cellAt(cells, (start + end) / 2);
  const half = Math.round((12 * hour) / cells.width);
  const day = swing(cycle, Math.max(0, at - half), Math.min(cycle.length, at + half));
  return (levelOf(slow[at] as number) * day) / tenLog;
}
