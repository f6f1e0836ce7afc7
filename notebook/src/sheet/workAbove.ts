import { logAbove } from './edits.js';
import type { Cell, Sheet } from './sheet.js';

/** Kinds of cells whose work a record gathers. */
const gathered = ['aim', 'covered', 'proof', 'findings'] as const;

/** A cell with its number on the page. */
export interface NumberedWork {
  readonly number: number;
  readonly cell: Cell<(typeof gathered)[number]>;
}

/** The cells above a cell that read the same log and site as it does, and whose work a record gathers. */
export function workAbove(sheet: Sheet, id: string): NumberedWork[] {
  const log = logAbove(sheet, id);
  const end = sheet.cells.findIndex((cell) => cell.id === id);
  return sheet.cells
    .slice(0, Math.max(0, end))
    .flatMap((cell, row) => (isWork(cell) && logAbove(sheet, cell.id) === log ? [{ number: row + 1, cell }] : []));
}

const isWork = (cell: Cell): cell is NumberedWork['cell'] => gathered.some((kind) => kind === cell.kind);
