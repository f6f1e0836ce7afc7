import { type Cell, freshCell, type Kind, newId, type Settings, type Sheet } from './sheet.js';

/*
 * Every change to a sheet: from one immutable sheet to the next. An edit that changes nothing gives back the very
 * same sheet, so that it is no step of the history.
 */

/** The sheet with its cells replaced. */
const withCells = (sheet: Sheet, cells: readonly Cell[]): Sheet => ({ ...sheet, cells });

/** Row of a cell; -1 when it is not in the sheet. */
const rowOf = (sheet: Sheet, id: string): number => sheet.cells.findIndex((cell) => cell.id === id);

/** A new title. */
export const retitled = (sheet: Sheet, title: string): Sheet => (title === sheet.title ? sheet : { ...sheet, title });

/** A new cell of a kind after the cell `after`, or at the top when there is no such cell. */
export function added(sheet: Sheet, kind: Kind, after: string | null): Sheet {
  const at = after === null ? 0 : rowOf(sheet, after) + 1;
  return withCells(sheet, sheet.cells.toSpliced(at, 0, freshCell(kind)));
}

/** Cells put in before a cell; at the end when there is no such cell. */
export function addedBefore(sheet: Sheet, cells: readonly Cell[], id: string): Sheet {
  const at = rowOf(sheet, id);
  return withCells(sheet, sheet.cells.toSpliced(at < 0 ? sheet.cells.length : at, 0, ...cells));
}

/** The sheet without a cell. */
export function removed(sheet: Sheet, id: string): Sheet {
  const at = rowOf(sheet, id);
  return at < 0 ? sheet : withCells(sheet, sheet.cells.toSpliced(at, 1));
}

/** A copy of a cell under it. */
export function duplicated(sheet: Sheet, id: string): Sheet {
  const at = rowOf(sheet, id);
  const cell = sheet.cells[at];
  return cell ? withCells(sheet, sheet.cells.toSpliced(at + 1, 0, { ...cell, id: newId() })) : sheet;
}

/** A cell moved by so many places, as far as there are places. */
export function moved(sheet: Sheet, id: string, places: number): Sheet {
  const at = rowOf(sheet, id);
  const cell = sheet.cells[at];
  const to = Math.max(0, Math.min(sheet.cells.length - 1, at + places));
  if (!cell || to === at) return sheet;
  return withCells(sheet, sheet.cells.toSpliced(at, 1).toSpliced(to, 0, cell));
}

/** A cell folded or unfolded. */
export function folded(sheet: Sheet, id: string, fold: boolean): Sheet {
  return replaced(sheet, id, (cell) => (cell.folded === fold ? cell : { ...cell, folded: fold }));
}

/** A cell with some of its settings changed. */
export function set<K extends Kind>(sheet: Sheet, cell: Cell<K>, change: Partial<Settings[K]>): Sheet {
  return replaced(sheet, cell.id, (old) =>
    old.kind === cell.kind ? ({ ...old, settings: { ...old.settings, ...change } } as Cell) : old,
  );
}

function replaced(sheet: Sheet, id: string, change: (cell: Cell) => Cell): Sheet {
  const at = rowOf(sheet, id);
  const old = sheet.cells[at];
  if (!old) return sheet;
  const cell = change(old);
  return cell === old ? sheet : withCells(sheet, sheet.cells.with(at, cell));
}

/** The log cell that a cell reads: the nearest above it, itself included. */
export function logAbove(sheet: Sheet, id: string): Cell<'log'> | undefined {
  const above = sheet.cells.slice(0, rowOf(sheet, id) + 1);
  return above.findLast((cell) => cell.kind === 'log');
}
