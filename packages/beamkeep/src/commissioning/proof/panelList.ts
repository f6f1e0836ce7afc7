import { UsageError } from '../../columns/index.js';
import { instantOf, nearest, quoted, type Site } from '../../site/index.js';
import type { PanelEvent } from './stepResult.js';

/** A table of text with its line numbers, such as the log room reads. */
export interface NamedRows {
  readonly file: string;
  readonly names: readonly string[];
  readonly rows: readonly { readonly line: number; readonly cells: readonly string[] }[];
}

/** Columns of a panel's list. */
const columns = ['time', 'beam', 'what'] as const;

/**
 * The panel's own list of one beam, its clock put right.
 *
 * @param table with the columns time, beam, what
 * @param site its zone reads times without an offset, its beams are those that may be named
 * @param beam whose lines are wanted
 * @param aheadSeconds by how much the panel's clock runs ahead of the logger's [s]; negative where it runs behind
 * @returns in order of time; `what` in lower case
 * @throws UsageError for a column that is missing, a time that is none, a beam that the site does not have
 */
export function panelList(
  table: NamedRows,
  site: Pick<Site, 'timeZone' | 'beams'>,
  beam: string,
  aheadSeconds = 0,
): PanelEvent[] {
  const [time, who, what] = columns.map((name) => {
    const column = table.names.findIndex((known) => known.toLowerCase() === name);
    if (column < 0)
      throw new UsageError(
        `${table.file}:1: no column "${name}": a panel's list has the columns ${columns.join(', ')}`,
      );
    return column;
  }) as [number, number, number];
  const ids = site.beams.map(({ id }) => id);
  const events = table.rows.flatMap(({ line, cells }) => {
    const id = cells[who] as string;
    if (!ids.includes(id))
      throw new UsageError(
        `${table.file}:${line}: ${quoted(id)} is no beam of the site; the nearest is "${nearest(id, ids)}"`,
      );
    const read = instantOf(cells[time] as string, site.timeZone);
    if (!('instant' in read))
      throw new UsageError(
        `${table.file}:${line}: ${quoted(cells[time])} is no time: write it as in 2027-03-02T09:00:00Z` +
          (read.why === 'clock-change' ? '; the clock change brings that hour twice or not at all' : ''),
      );
    return id === beam
      ? [{ time: read.instant - 1000 * aheadSeconds, what: (cells[what] as string).trim().toLowerCase() }]
      : [];
  });
  return events.sort((a, b) => a.time - b.time);
}
