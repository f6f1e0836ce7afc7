import { UsageError } from '../columns/index.js';
import { quoted, type Site } from '../site/index.js';
import type { LogHead } from './head.js';
import type { NoteBook } from './inputNotes.js';
import { clockCell, type LinePlan, nameCell, skipped, timeCell, valueCell } from './linePlan.js';
import { type LogShape, logShape } from './logShape.js';
import { onlyOther } from './onlyOther.js';
import type { RowColumns } from './rowBlock.js';
import { notFound, theOnly } from './theOnly.js';
import { timeFormats } from './timeFormats.js';
import { type WantedColumn, wantedColumns } from './wantedColumns.js';
import { workedOutFormat } from './workedOutFormat.js';

/*
 * Which cell of which file goes where. All files are looked at before any is read, because a beam that one file does
 * not know may stand in another, and because a missing column must be told before an hour is spent on the rest.
 */

/** How a log is read: its columns, and one plan a file. */
export interface LogPlan {
  readonly columns: RowColumns;
  readonly files: readonly LinePlan[];
  /** Long form: names of readings that nobody wants, as far as they have been met. */
  readonly unwanted: ReadonlySet<string>;
}

/** Most names of unwanted readings that are remembered. */
const mostUnwanted = 100;

/**
 * Plans the reading of a log.
 *
 * @param heads beginnings of its files
 * @throws UsageError that names the file and the column where a column is missing or cannot be told
 */
export function logPlan(heads: readonly LogHead[], site: Site, notes: NoteBook): LogPlan {
  const wanted = wantedColumns(site);
  const shapes = heads.map((head) => logShape(head, site, wanted));
  const formats = timeFormats(heads, site, notes);
  const claimed = new Set(wanted.flatMap(({ name }) => name ?? []));
  const names = wanted.map(({ name, by }) => name ?? onlyOther(shapes, claimed, by, notes));
  const unwanted = new Set<string>();
  refuseMissing(shapes, wanted, names);
  const files = shapes.map((shape, at): LinePlan => {
    const { head, time, clock, long } = shape;
    const actions = new Int32Array(head.names.length).fill(skipped);
    actions[time] = timeCell;
    if (clock >= 0) actions[clock] = clockCell;
    const plan = {
      separator: head.separator.charCodeAt(0),
      decimalComma: head.separator !== ',',
      actions,
      format: formats[at] as LinePlan['format'],
    };
    if (long !== undefined) {
      actions[long.name] = nameCell;
      actions[long.value] = valueCell;
      return { ...plan, absent: [], columnOf: columnOfReading(head, wanted, names, unwanted) };
    }
    const absent: number[] = [];
    names.forEach((name, column) => {
      if (!head.names.includes(name)) absent.push(column);
      else actions[theOnly(head, name, wanted[column]?.by ?? '')] = column;
    });
    return { ...plan, absent };
  });
  const of = (name: string | undefined): number | undefined => {
    const at = name === undefined ? -1 : names.indexOf(name);
    return at < 0 ? undefined : at;
  };
  const signal = site.beams.map((beam) => wanted.findIndex(({ name }) => name === beam.signalColumn));
  return { columns: { names, signal, of, stated: new Float64Array(names.length) }, files, unwanted };
}

/** Long form: the column of a reading's name. */
function columnOfReading(
  head: LogHead,
  wanted: readonly WantedColumn[],
  names: readonly string[],
  unwanted: Set<string>,
): (name: string, line: number) => number | undefined {
  const open = wanted.findIndex(({ name }) => name === undefined);
  return (name, line) => {
    const at = names.indexOf(name);
    if (at >= 0) return at;
    if (open >= 0) {
      throw new UsageError(
        `${head.file}:${line}: ${wanted[open]?.by} is left out, and the log has readings of ${quoted(names[open])} and of ${quoted(name)}: say in the site file which one is the beam`,
      );
    }
    if (unwanted.size < mostUnwanted) unwanted.add(name);
    return undefined;
  };
}

/** Refuses a log in whose headers a wanted column stands nowhere, and one that is used for time. */
function refuseMissing(shapes: readonly LogShape[], wanted: readonly WantedColumn[], names: readonly string[]): void {
  for (const [column, name] of names.entries()) {
    const by = wanted[column]?.by;
    for (const { head, time, clock } of shapes) {
      if (head.names[time] !== name && head.names[clock] !== name) continue;
      throw new UsageError(`${head.file}:${head.headerLine}: ${by}: ${quoted(name)} is the column of time`);
    }
    if (shapes.some(({ head, long }) => long !== undefined || head.names.includes(name))) continue;
    const [first] = shapes;
    const known = [...new Set(shapes.flatMap(({ head }) => head.names))];
    const headless = workedOutFormat([known[0] ?? ''], true);
    const hint = 'format' in headless ? '; the first line is no header but data: write one above it' : '';
    const more = shapes.length > 1 ? ` (and ${shapes.length - 1} more)` : '';
    throw new UsageError(
      `${first?.head.file}:${first?.head.headerLine}${more}: ${by}: ${notFound(name, known, 'column')}${hint}`,
    );
  }
}
