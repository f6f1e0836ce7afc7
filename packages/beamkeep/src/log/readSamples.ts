import type { Channel, Samples } from '../columns/index.js';
import type { Site } from '../site/index.js';
import type { InputReport } from './inputNotes.js';
import type { LogSources, ReadOptions } from './logSource.js';
import { readRows } from './readRows.js';
import { TraceSink } from './traceSink.js';

/** Every usable sample of one beam, and what was logged beside it. */
export interface BeamSamples {
  /** The beam's `id` in the site file. */
  readonly id: string;
  readonly samples: Samples;
  /** Usual interval between samples [s]: the median of the differences. */
  readonly intervalSeconds: number;
  readonly temperature?: Channel;
  readonly humidity?: Channel;
  readonly gain?: Channel;
  readonly plant?: Channel;
  /** What had to be assumed to read the levels, in words. */
  readonly assumed: readonly string[];
}

/**
 * Reads every sample of a log into columns. Memory grows with the log, by 16 bytes a reading; for long logs see
 * `readTraces`, and to look at samples as they come `readBeams`.
 *
 * @param sources the log, or the files that are one log
 * @param site what it is a log of; of `sampling` on-change what is held is repeated every minute
 * @returns the samples of each beam of the site, in its order, and what was mended or dropped
 * @throws UsageError where the log cannot be used: it names the file, the line or the column, and what to do
 * @example const { beams } = await readSamples(logOfText(csv), parseSite(json));
 */
export async function readSamples(
  sources: LogSources,
  site: Site,
  options: ReadOptions = {},
): Promise<{ beams: BeamSamples[]; input: InputReport }> {
  const sink = new TraceSink(site, { readings: Number.POSITIVE_INFINITY, buckets: 0, eventful: 0 });
  const input = await readRows(sources, site, sink, options);
  const beams = sink
    .records()
    .map(({ trace: { time, level }, quantum: _, ...beam }) => ({ ...beam, samples: { time, level } }));
  return { beams, input };
}
