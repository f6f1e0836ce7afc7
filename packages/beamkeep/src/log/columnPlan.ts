import { UsageError } from '../columns/index.js';
import { nearest, quoted, type Site, type TimeFormat } from '../site/index.js';
import { cellNumber } from './cells.js';
import type { LogHead } from './head.js';
import type { NoteBook } from './inputNotes.js';
import { clockCell, type LinePlan, nameCell, skipped, timeCell, valueCell } from './linePlan.js';
import type { RowColumns, WantedColumn } from './rowBlock.js';
import { wantedColumns } from './rowBlock.js';
import { workedOutFormat } from './workedOutFormat.js';

/*
 * Which cell of which file goes where. All files are looked at before any is read, because a beam that one file does
 * not know may stand in another, and because a missing column must be told before an hour is spent on the rest.
 */

/** How a log is read: its columns, and one plan a file. */
export interface LogPlan {
  readonly columns: RowColumns;
  readonly files: readonly LinePlan[];
  /** Whether some file says one reading a line. */
  readonly longForm: boolean;
}

/**
 * Plans the reading of a log.
 *
 * @param heads beginnings of its files
 * @throws UsageError that names the file and the column where a column is missing or cannot be told
 */
export function logPlan(heads: readonly LogHead[], site: Site, notes: NoteBook): LogPlan {
  const wanted = wantedColumns(site);
  const names: (string | undefined)[] = wanted.map(({ name }) => name);
  const where = heads.map(({ file }) => file).join(', ');
  const shapes = heads.map((head) => shapeOf(head, site, wanted));

  const open = names.indexOf(undefined);
  if (open >= 0) {
    const claimed = new Set(names.filter((name) => name !== undefined));
    names[open] = onlyOther(heads, shapes, claimed, wanted[open] as WantedColumn, notes);
  }
  const longForm = shapes.some(({ long }) => long);
  if (!longForm) {
    for (const [at, { by }] of wanted.entries()) {
      const name = names[at];
      if (name === undefined || heads.some((head) => head.names.includes(name))) continue;
      const known = [...new Set(heads.flatMap((head) => head.names))];
      throw new UsageError(
        `${where}:${heads[0]?.headerLine}: ${by}: no column ${quoted(name)}${suggestion(name, known)}`,
      );
    }
  }
  const columns: RowColumns = {
    names: names.map((name) => name ?? ''),
    signal: site.beams.map(({ signalColumn }) => {
      const at = wanted.findIndex(({ name }) => name === signalColumn);
      return at;
    }),
    of: (name) => {
      const at = name === undefined ? -1 : names.indexOf(name);
      return at < 0 ? undefined : at;
    },
  };
  return {
    columns,
    longForm,
    files: heads.map((head, at) => linePlan(head, shapes[at] as Shape, names, site, notes, wanted)),
  };
}

const suggestion = (name: string, known: readonly string[]): string => {
  const near = nearest(name, known);
  const listed = known.slice(0, 12).map(quoted).join(', ');
  const more = known.length > 12 ? ` and ${known.length - 12} more` : '';
  return `${near === undefined ? '' : `, the nearest is ${quoted(near)}`}; the header has ${listed}${more}`;
};

/** Where time stands in a file, and whether the file says one reading a line. */
interface Shape {
  readonly time: number;
  readonly clock: number;
  readonly long: boolean;
  readonly name: number;
  readonly value: number;
}

function shapeOf(head: LogHead, site: Site, wanted: readonly WantedColumn[]): Shape {
  const { names, file, headerLine } = head;
  const place = `${file}:${headerLine}`;
  const asked =
    site.timeColumn === undefined ? [] : typeof site.timeColumn === 'string' ? [site.timeColumn] : site.timeColumn;
  const at = asked.map((name) => {
    const found = names.indexOf(name);
    if (found < 0) throw new UsageError(`${place}: timeColumn: no column ${quoted(name)}${suggestion(name, names)}`);
    if (names.indexOf(name, found + 1) >= 0)
      throw new UsageError(`${place}: two columns are named ${quoted(name)}: name them apart`);
    return found;
  });
  const time = at[0] ?? 0;
  const clock = at[1] ?? -1;
  for (const { name } of wanted) {
    if (name !== undefined && names.indexOf(name) !== names.lastIndexOf(name)) {
      throw new UsageError(`${place}: two columns are named ${quoted(name)}: name them apart`);
    }
  }
  const others = names.map((_, cell) => cell).filter((cell) => cell !== time && cell !== clock);
  if (others.length === 0) {
    throw new UsageError(
      `${place}: only ${names.length === 1 ? 'one column' : 'time columns'} (${names
        .slice(0, 3)
        .map((name) => quoted(name))
        .join(', ')}): a log has time and at least one beam; cells are separated by "," or ";" or tab`,
    );
  }
  const [name = -1, value = -1] = others;
  return { time, clock, name, value, long: others.length === 2 && isLong(head, name, value, wanted) };
}

/** Two columns beside time are a name and a value where no wanted column is in the header and the first holds names. */
function isLong(head: LogHead, name: number, value: number, wanted: readonly WantedColumn[]): boolean {
  const { names, lines } = head;
  if (wanted.some((column) => column.name !== undefined && names.includes(column.name))) return false;
  const known = new Set(wanted.map((column) => column.name));
  const told = lines.map((cells) => cells[name] ?? '');
  if (told.some((text) => known.has(text))) return true;
  const isText = (text: string) => cellNumber(text, true) === undefined;
  const values = lines.map((cells) => cells[value] ?? '');
  return told.length > 0 && told.every(isText) && !values.every(isText);
}

/** The name of the only column beside time that no key of the site claims. */
function onlyOther(
  heads: readonly LogHead[],
  shapes: readonly Shape[],
  claimed: ReadonlySet<string>,
  { by }: WantedColumn,
  notes: NoteBook,
): string | undefined {
  const hasNumbers = new Map<string, boolean>();
  const first = heads[0] as LogHead;
  heads.forEach((head, file) => {
    const { time, clock, long, name, value } = shapes[file] as Shape;
    const see = (column: string, cell: string) => {
      const number = cellNumber(cell, head.separator !== ',');
      const text = number === undefined;
      if (!hasNumbers.has(column) || !text) hasNumbers.set(column, !text && !Number.isNaN(number));
    };
    if (long)
      for (const cells of head.lines) if (!claimed.has(cells[name] ?? '')) see(cells[name] ?? '', cells[value] ?? '');
    if (!long) {
      head.names.forEach((column, cell) => {
        if (cell === time || cell === clock || claimed.has(column)) return;
        hasNumbers.set(column, hasNumbers.get(column) ?? head.lines.length === 0);
        for (const cells of head.lines) {
          const number = cellNumber(cells[cell] ?? '', head.separator !== ',');
          if (number === undefined) continue;
          hasNumbers.set(column, true);
          break;
        }
      });
    }
  });
  const others = [...hasNumbers.keys()];
  if (others.length === 1) return others[0];
  const place = `${first.file}:${first.headerLine}: ${by} is left out`;
  if (others.length === 0)
    throw new UsageError(`${place}, and the log has no column for it: every one beside time has another use`);
  const numeric = others.filter((name) => hasNumbers.get(name));
  if (numeric.length === 1) {
    notes.note(first.file, first.headerLine, 'beam read from the only column with numbers', numeric[0]);
    return numeric[0];
  }
  throw new UsageError(
    `${place}, and the log has ${others.length} columns beside time: ${others
      .slice(0, 12)
      .map((name) => quoted(name))
      .join(', ')}. Say which one is the beam.`,
  );
}

function linePlan(
  head: LogHead,
  { time, clock, long, name, value }: Shape,
  names: (string | undefined)[],
  site: Site,
  notes: NoteBook,
  wanted: readonly WantedColumn[],
): LinePlan {
  const actions = new Int32Array(head.names.length).fill(skipped);
  actions[time] = timeCell;
  if (clock >= 0) actions[clock] = clockCell;
  const plan = {
    separator: head.separator.charCodeAt(0),
    decimalComma: head.separator !== ',',
    actions,
    format: formatOf(head, time, clock, site, notes),
  };
  if (long) {
    actions[name] = nameCell;
    actions[value] = valueCell;
    const open = wanted.findIndex((column) => column.name === undefined);
    const columnOf = (text: string, line: number): number | undefined => {
      const at = names.indexOf(text);
      if (at >= 0) return at;
      if (open >= 0) {
        throw new UsageError(
          `${head.file}:${line}: ${wanted[open]?.by} is left out, and the log has readings of ${quoted(names[open])} and ${quoted(text)}. Say which one is the beam.`,
        );
      }
      return undefined;
    };
    return { ...plan, absent: [], columnOf };
  }
  const absent: number[] = [];
  names.forEach((column, at) => {
    const cell = column === undefined ? -1 : head.names.indexOf(column);
    if (cell < 0 || cell === time || cell === clock) absent.push(at);
    else actions[cell] = at;
  });
  return { ...plan, absent };
}

const inWords: Record<TimeFormat, string> = {
  iso: 'ISO 8601',
  'unix-seconds': 'Unix seconds',
  'unix-milliseconds': 'Unix milliseconds',
  'day-first': 'day before month',
  'month-first': 'month before day',
};

function formatOf(head: LogHead, time: number, clock: number, site: Site, notes: NoteBook): TimeFormat {
  if (site.timeFormat !== undefined) return site.timeFormat;
  const texts = head.lines
    .map((cells) => (clock < 0 ? (cells[time] ?? '') : `${cells[time]} ${cells[clock]}`))
    .filter((text) => text !== '');
  const line = head.headerLine + 1;
  if (texts.length === 0)
    throw new UsageError(
      `${head.file}:${line}: no line after the header has ${head.names.length} cells as the header has`,
    );
  const found = workedOutFormat(texts, head.separator !== ',');
  if ('format' in found) {
    notes.note(head.file, line, `times were taken for ${inWords[found.format]}`);
    return found.format;
  }
  if (found.trouble === 'both') {
    throw new UsageError(
      `${head.file}:${line}: ${quoted(found.text)} can be day or month first: set "timeFormat" to "day-first" or "month-first" in the site file`,
    );
  }
  throw new UsageError(
    `${head.file}:${line}: ${quoted(found.text)} is not a time in a known format: set "timeColumn" or "timeFormat" in the site file`,
  );
}
