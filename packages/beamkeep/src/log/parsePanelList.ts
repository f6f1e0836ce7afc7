import { strToU8 } from 'fflate';
import { type PanelEntry, UsageError } from '../columns/index.js';
import { quoted, type Site, type TimeFormat } from '../site/index.js';
import { timeReader } from './civilTime.js';
import { type InputNote, noteBook } from './inputNotes.js';
import { type ClockReading, listInstants } from './listInstants.js';
import { shownName } from './shownName.js';
import { type TextTable, textTable } from './textTable.js';
import { workedOutFormat } from './workedOutFormat.js';

/** A fire panel's list of what it signalled. */
export interface PanelList {
  /** In order of time on the panel's clock. */
  readonly entries: readonly PanelEntry[];
  /** Lines that were left out, and what was worked out; each names the list's file. */
  readonly notes: readonly InputNote[];
}

/** A time in a list may hold a decimal comma: where commas divide cells, none is left in one but in quotes. */
const decimalComma = true;

/**
 * Reads a fire panel's list: a header line with `time`, `beam` and `what` in any order, then a line an event. Cells
 * are separated by `,` `;` or a tab; times are written as in a log, without an offset in the site's zone. An empty
 * beam, or no such column, concerns all beams.
 *
 * @param bytes the whole file, or its text
 * @param file its name, for errors and notes
 * @param site its zone and its beams; its `timeFormat` decides where the list does not tell day from month
 * @returns what could be read; lines of other devices and broken lines are told under `notes`
 * @throws UsageError where this is no such list, or no line of it can be read
 * @example parsePanelList('time,beam,what\n2027-03-16T06:42:30Z,B3,fire\n', 'events.csv', site).entries.length // 1
 */
export function parsePanelList(
  bytes: Uint8Array | string,
  file: string,
  site: Pick<Site, 'timeZone' | 'beams' | 'timeFormat'>,
): PanelList {
  const name = shownName(file);
  const table = textTable(bytes, name);
  const [time, beam, what] = [columnOf(table, 'time'), columnOf(table, 'beam'), columnOf(table, 'what')];
  for (const [word, cell] of [
    ['time', time],
    ['what', what],
  ] as const) {
    if (cell >= 0) continue;
    const found = table.names.map(quoted).join(', ');
    throw new UsageError(
      `${name}:1: no column "${word}" (${found}): a panel's list has the columns time, beam (may be left out) and what`,
    );
  }
  const book = noteBook();
  for (const { line, what: trouble, lines } of table.notes) book.note(name, line, trouble, { lines });
  const texts = table.rows.map(({ cells }) => cells[time] as string);
  const format = formatOf(table, texts, site.timeFormat);
  const reader = timeReader(format, decimalComma);
  const found: (ClockReading & { readonly line: number; readonly entry: Omit<PanelEntry, 'time'> })[] = [];
  for (const { line, cells } of table.rows) {
    const text = cells[time] as string;
    const known = beamOf(cells[beam] ?? '', site);
    const said = cells[what] as string;
    const written = strToU8(text);
    if (!reader.read(written, 0) || reader.end !== written.length)
      book.note(name, line, 'not a time: left out', { what: `not a time, left out: ${quoted(text)}` });
    else if (known === undefined)
      book.note(name, line, 'no beam of the site: left out', {
        what: `no beam of the site, left out: ${quoted(cells[beam])}`,
      });
    else if (said === '') book.note(name, line, 'says nothing under "what": left out');
    else found.push({ clock: reader.time, local: reader.local, line, entry: { ...known, what: said } });
  }
  if (found.length === 0) {
    const [first] = book.list(1);
    throw new UsageError(
      first === undefined
        ? `${name}: the list ends after its header: there is no event`
        : `${name}:${first.line}: ${first.what}; no line of the list can be used`,
    );
  }
  const instants = listInstants(found, site.timeZone, (row, told) => book.note(name, found[row]?.line ?? 1, told));
  const entries = found.map(({ entry }, row) => ({ time: instants[row] as number, ...entry }));
  return { entries: entries.sort((a, b) => a.time - b.time), notes: book.list(2) };
}

const columnOf = ({ names }: TextTable, word: string): number =>
  names.findIndex((name) => name.trim().toLowerCase() === word);

/** The beam of a cell: nothing for all, undefined where the site has no such beam. Upper and lower case are one. */
function beamOf(cell: string, { beams }: Pick<Site, 'beams'>): { readonly beam?: string } | undefined {
  if (cell === '') return {};
  const lower = cell.toLowerCase();
  const id = beams.find((each) => each.id === cell)?.id ?? beams.find((each) => each.id.toLowerCase() === lower)?.id;
  return id === undefined ? undefined : { beam: id };
}

/** How the times are written: as the list tells; where it leaves day and month open, as the site says. */
function formatOf({ file, rows }: TextTable, texts: readonly string[], told: TimeFormat | undefined): TimeFormat {
  if (texts.length === 0) return told ?? 'iso';
  const found = workedOutFormat(texts, decimalComma);
  if ('format' in found) return found.format;
  const at = `${file}:${rows[texts.indexOf(found.text)]?.line ?? 2}`;
  if (found.trouble === 'neither')
    throw new UsageError(
      `${at}: ${quoted(found.text)} is not a time in a known format: write it as in a log, such as 2027-03-02T09:00:00Z`,
    );
  if (told === 'day-first' || told === 'month-first') return told;
  throw new UsageError(
    `${at}: ${quoted(found.text)} can be day first or month first: set "timeFormat" to "day-first" or "month-first" in the site file, or write times as in 2027-03-02T09:00:00Z`,
  );
}
