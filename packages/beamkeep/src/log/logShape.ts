import { UsageError } from '../columns/index.js';
import type { Site } from '../site/index.js';
import { cellNumber } from './cells.js';
import type { LogHead } from './head.js';
import { listed } from './theOnly.js';
import { timePlace } from './timePlace.js';
import type { WantedColumn } from './wantedColumns.js';

/** How the cells of a file's lines are laid out. */
export interface LogShape {
  readonly head: LogHead;
  /** Cell of the time, or of the date; less than 0 where there is none. */
  readonly time: number;
  /** Cell of the time of day; less than 0 where it stands with the date. */
  readonly clock: number;
  /** One reading a line: the cells of its name and of its value. */
  readonly long?: { readonly name: number; readonly value: number };
}

/**
 * The layout of a file.
 *
 * @throws UsageError where it has no column beside time
 */
export function logShape(head: LogHead, site: Site, wanted: readonly WantedColumn[]): LogShape {
  const { time, clock } = timePlace(head, site);
  const others = head.names.map((_, cell) => cell).filter((cell) => cell !== time && cell !== clock);
  const [name, value] = others;
  if (name === undefined) {
    throw new UsageError(
      `${head.file}:${head.headerLine}: no column beside time (${listed(head.names)}): a log has time and at least one beam, separated by "," or ";" or tab`,
    );
  }
  const shape = { head, time, clock };
  return value !== undefined && others.length === 2 && isLong(head, name, value, wanted)
    ? { ...shape, long: { name, value } }
    : shape;
}

/**
 * Two columns beside time are a name and a value where no wanted column stands in the header, and the first holds
 * names that are wanted, or at least nothing but words where the second holds numbers.
 */
function isLong({ names, lines }: LogHead, name: number, value: number, wanted: readonly WantedColumn[]): boolean {
  if (wanted.some((column) => column.name !== undefined && names.includes(column.name))) return false;
  const known = new Set(wanted.map((column) => column.name));
  const told = lines.map((cells) => cells[name] ?? '');
  if (told.some((text) => known.has(text))) return true;
  const isWord = (text: string) => cellNumber(text, true) === undefined;
  return told.length > 0 && told.every(isWord) && !lines.every((cells) => isWord(cells[value] ?? ''));
}

/** The names of what a file holds beside time, and the cells of each in its first lines. */
export function readingsOf({ head, time, clock, long }: LogShape): Map<string, string[]> {
  const readings = new Map<string, string[]>();
  const add = (name: string, cell: string | undefined) => {
    const cells = readings.get(name) ?? [];
    if (cell !== undefined) cells.push(cell);
    readings.set(name, cells);
  };
  if (long !== undefined) for (const cells of head.lines) add(cells[long.name] ?? '', cells[long.value]);
  else {
    head.names.forEach((name, cell) => {
      if (cell === time || cell === clock) return;
      add(name, undefined);
      for (const cells of head.lines) add(name, cells[cell]);
    });
  }
  return readings;
}
