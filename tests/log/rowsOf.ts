import { type InputReport, type LogSources, type ReadOptions, readRows } from 'beamkeep/log';
import type { Site } from 'beamkeep/site';
import { parseSite } from 'beamkeep/site';

/** Everything that a log gives, held in plain lists, so that two readings of it can be compared. */
export interface RowsRead {
  readonly names: readonly string[];
  readonly time: readonly number[];
  /** Columns, each with a value for every time. */
  readonly columns: readonly (readonly number[])[];
  readonly input: InputReport;
}

/** Reads a log into plain lists. */
export async function rowsOf(sources: LogSources, site: Site, options: ReadOptions = {}): Promise<RowsRead> {
  let names: readonly string[] = [];
  const time: number[] = [];
  const columns: number[][] = [];
  const input = await readRows(
    sources,
    site,
    {
      header(told) {
        names = told.names;
        for (const _ of names) columns.push([]);
      },
      rows(block) {
        for (let row = 0; row < block.count; row++) {
          time.push(block.time[row] ?? Number.NaN);
          columns.forEach((column, c) => {
            column.push(block.columns[c]?.[row] ?? Number.NaN);
          });
        }
      },
      end() {},
    },
    options,
  );
  return { names, time, columns, input };
}

/** A site with one reflective beam for each signal column, for tests. */
export function siteOf(signals: readonly (string | undefined)[], more: object = {}, beamMore: object = {}): Site {
  return parseSite({
    format: 'beamkeep-site/1',
    name: 'Invented hall',
    beams: signals.map((signalColumn, at) => ({
      id: `B${at + 1}`,
      layout: 'reflective',
      separation: 50,
      ...(signalColumn === undefined ? {} : { signalColumn }),
      ...beamMore,
    })),
    ...more,
  });
}

/** Bytes in chunks of the given sizes, one after the other and over again. */
export async function* inChunks(bytes: Uint8Array, sizes: readonly number[]): AsyncGenerator<Uint8Array> {
  for (let from = 0, at = 0; from < bytes.length; at++) {
    const size = Math.max(1, sizes[at % sizes.length] ?? 1);
    yield bytes.slice(from, from + size);
    from += size;
  }
}
