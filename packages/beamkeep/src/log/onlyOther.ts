import { UsageError } from '../columns/index.js';
import { cellNumber } from './cells.js';
import type { NoteBook } from './inputNotes.js';
import { type LogShape, readingsOf } from './logShape.js';
import { listed } from './theOnly.js';

/*
 * The beam whose signalColumn is left out is the only column beside time that no key of the site file claims. A column
 * of words (a remark, a state) cannot be a beam, so it is left out of the count; that is told, because it is a guess.
 */

/**
 * Name of the only column beside time, or of the only readings of a long form, that no key of the site claims.
 *
 * @param claimed names that have another use
 * @param by the key of the site file that is left out
 * @throws UsageError where there is none, or several
 */
export function onlyOther(
  shapes: readonly LogShape[],
  claimed: ReadonlySet<string>,
  by: string,
  notes: NoteBook,
): string {
  const numbers = new Map<string, number>();
  const words = new Set<string>();
  for (const shape of shapes) {
    for (const [name, cells] of readingsOf(shape)) {
      if (claimed.has(name)) continue;
      numbers.set(name, numbers.get(name) ?? 0);
      for (const cell of cells) {
        const value = cellNumber(cell, shape.head.separator !== ',');
        if (value === undefined) words.add(name);
        else if (!Number.isNaN(value)) numbers.set(name, (numbers.get(name) ?? 0) + 1);
      }
    }
  }
  const all = [...numbers.keys()];
  const [first] = shapes;
  const place = `${first?.head.file}:${first?.head.headerLine}: ${by} is left out`;
  if (all.length === 0) throw new UsageError(`${place}, and the log has no column for it: each has another use`);
  const possible = all.filter((name) => (numbers.get(name) ?? 0) > 0 || !words.has(name));
  const [only] = possible;
  if (possible.length === 1 && only !== undefined) {
    if (all.length > 1)
      notes.note(first?.head.file ?? '', first?.head.headerLine ?? 1, 'the beam is the only column with numbers', {
        found: only,
      });
    return only;
  }
  const kinds = shapes.some(({ long }) => long) ? 'readings' : 'columns beside time';
  throw new UsageError(
    `${place}, and the log has several ${kinds} (${listed(all)}): say in the site file which one is the beam`,
  );
}
