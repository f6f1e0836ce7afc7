import type { BeamRecord } from '../columns/index.js';
import type { Site } from '../site/index.js';
import type { InputReport } from './inputNotes.js';
import type { LogSources, ReadOptions } from './logSource.js';
import { readRows } from './readRows.js';
import { TraceSink } from './traceSink.js';

/**
 * Reads a log into one condensed record a beam: in one pass, in memory that does not grow with the rate of sampling.
 * Up to four million readings every sample is kept; beyond, quiet minutes become one row each.
 *
 * @param sources the log, or the files that are one log
 * @param site what it is a log of
 * @returns a record for each beam of the site, in its order, and what was mended or dropped
 * @throws UsageError where the log cannot be used: it names the file, the line or the column, and what to do
 * @example const { records, input } = await readTraces(logOfText(csv), parseSite(json));
 */
export async function readTraces(
  sources: LogSources,
  site: Site,
  options: ReadOptions = {},
): Promise<{ records: BeamRecord[]; input: InputReport }> {
  const sink = new TraceSink(site);
  const input = await readRows(sources, site, sink, options);
  return { records: sink.records(), input };
}
