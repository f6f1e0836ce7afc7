import { UsageError } from 'beamkeep';
import type { BeamRecord, Channel } from 'beamkeep/columns';
import type { Site } from 'beamkeep/site';
import * as v from 'valibot';
import type { InputTold } from './reading.js';
import { changedReading, readingSettings } from './readingSettings.js';

/*
 * The reduced log as one file: the condensed records of every beam, bit for bit, so that a sheet can be opened without
 * the whole log and find the same. A line in plain text, then one gzip stream, whose own checksum tells damage:
 *
 *     beamkeep-records/1 LF
 *     gzip: length of the header [4 bytes], header (JSON), columns one after the other
 *
 *     columns of a beam      wide [1] time [8] until [8] level [8] count [4], then low, high, spread [4] of wide rows
 *     columns of a channel   time [8] value [8]
 *
 * Numbers are little-endian. Instants stand as differences, which pack small: time from the instant before, until from
 * its own time. A row whose least and greatest are its level is not wide. A channel that several beams read (a roof
 * temperature) stands once. The header also holds what of the site the reading rests on: with another clean-air reading
 * or another column these records would not be those of the log, and are refused.
 */

const family = 'beamkeep-records/';
const firstLine = `${family}1\n`;

/** What is packed, and what comes out again. */
export interface PackedLog {
  readonly records: readonly BeamRecord[];
  readonly input: InputTold;
}

const channelNames = ['temperature', 'humidity', 'gain', 'plant'] as const;

const length = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(1e9));
const headerSchema = v.object({
  beams: v.array(
    v.object({
      id: v.string(),
      rows: length,
      wide: length,
      /** Null where it is not known. */
      intervalSeconds: v.nullable(v.number()),
      quantum: v.number(),
      logged: v.optional(v.number()),
      cleanAir: v.optional(v.number()),
      assumed: v.array(v.string()),
      /** Rows of `channels`, by what they hold. */
      beside: v.partial(v.object({ temperature: length, humidity: length, gain: length, plant: length })),
    }),
  ),
  channels: v.array(v.object({ rows: length })),
  input: v.object({
    lines: v.number(),
    dropped: v.number(),
    notes: v.array(
      v.object({ line: v.number(), lines: v.number(), what: v.string(), file: v.exactOptional(v.string()) }),
    ),
  }),
  reading: v.array(v.tuple([v.string(), v.string()])),
});
type Header = v.InferOutput<typeof headerSchema>;

/** Whether a file is a reduced log, of this version or another. */
export async function isPackedLog(blob: Blob): Promise<boolean> {
  return (await blob.slice(0, family.length).text()) === family;
}

/** Packs the records of a log that was read with a site. */
export async function packedLog({ records, input }: PackedLog, site: Site): Promise<Blob> {
  const channels = [...new Set(records.flatMap((one) => channelNames.flatMap((name) => one[name] ?? [])))];
  const columns: ArrayBufferView<ArrayBuffer>[] = [];
  const beams = records.map((record): Header['beams'][number] => {
    const { trace, intervalSeconds, id, quantum, logged, cleanAir, assumed } = record;
    const wide = wideRows(record);
    columns.push(
      wide,
      differences(trace.time),
      trace.until.map((until, row) => until - (trace.time[row] as number)),
      trace.level.slice(),
      trace.count.slice(),
      ...[trace.low, trace.high, trace.spread].map((column) => column.filter((_, row) => wide[row] === 1)),
    );
    return {
      id,
      rows: trace.time.length,
      wide: wide.reduce((sum, one) => sum + one, 0),
      intervalSeconds: Number.isFinite(intervalSeconds) ? intervalSeconds : null,
      quantum,
      ...(logged === undefined ? {} : { logged }),
      ...(cleanAir === undefined ? {} : { cleanAir }),
      assumed: [...assumed],
      beside: Object.fromEntries(
        channelNames.flatMap((name) => {
          const channel = record[name];
          return channel ? [[name, channels.indexOf(channel)]] : [];
        }),
      ),
    };
  });
  for (const { time, value } of channels) columns.push(differences(time), value.slice());
  const header: Header = {
    beams,
    channels: channels.map(({ time }) => ({ rows: time.length })),
    input: { ...input, notes: [...input.notes] },
    reading: readingSettings(site, records),
  };
  const text = new TextEncoder().encode(JSON.stringify(header));
  const body = new Blob([Uint32Array.of(text.length), text, ...columns]);
  return new Blob([firstLine, await through(body, new CompressionStream('gzip'))]);
}

/**
 * The records out of a reduced log.
 *
 * @param name of the file, for messages
 * @param blob the file
 * @param site the site it is to be explained with
 * @throws UsageError when the file is damaged, of another version, or was read with another site
 */
export async function unpackedLog(name: string, blob: Blob, site: Site): Promise<PackedLog> {
  const line = (await blob.slice(0, 64).text()).split('\n', 1)[0] ?? '';
  if (`${line}\n` !== firstLine)
    throw new UsageError(
      `${name}: this reduced log is of version "${line.slice(family.length, family.length + 20)}", and this notebook knows version 1. Open it with a newer notebook, or drop the whole log.`,
    );
  let packed: PackedLog;
  let reading: Header['reading'];
  try {
    const body = await through(blob.slice(firstLine.length), new DecompressionStream('gzip'));
    ({ packed, reading } = taken(await body.arrayBuffer()));
  } catch (error) {
    throw new UsageError(
      `${name}: this reduced log is damaged (${(error as Error).message}). Nothing is shown of it; settings and notes are as they were. Open another copy of the sheet, or drop the whole log.`,
    );
  }
  const changed = changedReading(reading, readingSettings(site, packed.records));
  if (changed)
    throw new UsageError(
      `${name}: this reduced log was read with ${changed.what} ${changed.before}, and the site now says ${changed.now}. Put it back, or drop the whole log, which can be read anew.`,
    );
  return packed;
}

const through = (blob: Blob, turned: CompressionStream | DecompressionStream): Promise<Blob> =>
  new Response(blob.stream().pipeThrough(turned)).blob();

function taken(bytes: ArrayBuffer): { packed: PackedLog; reading: Header['reading'] } {
  let at = 0;
  const cut = (size: number): ArrayBuffer => {
    if (at + size > bytes.byteLength) throw new Error('it ends too early');
    at += size;
    return bytes.slice(at - size, at);
  };
  const [size = 0] = new Uint32Array(cut(4));
  const header = v.parse(headerSchema, JSON.parse(new TextDecoder().decode(cut(size))));
  const traces = header.beams.map(({ id, rows, wide: many }): BeamRecord['trace'] => {
    const wide = new Uint8Array(cut(rows));
    const time = summed(new Float64Array(cut(8 * rows)));
    const until = new Float64Array(cut(8 * rows)).map((more, row) => (time[row] as number) + more);
    const level = new Float64Array(cut(8 * rows));
    const count = new Uint32Array(cut(4 * rows));
    if (wide.reduce((sum, one) => sum + one, 0) !== many) throw new Error(`beam "${id}": its rows do not add up`);
    const flat = Float32Array.from(level);
    const [low, high, spread] = [flat, flat, new Float32Array(rows)].map((column) =>
      spreadOut(new Float32Array(cut(4 * many)), wide, column),
    ) as [Float32Array, Float32Array, Float32Array];
    const trace = { time, until, level, low, high, spread, count };
    const broken = brokenRow(trace);
    if (broken >= 0) throw new Error(`beam "${id}": row ${broken + 1} does not follow the one before`);
    return trace;
  });
  const channels = header.channels.map(({ rows }): Channel => {
    const time = summed(new Float64Array(cut(8 * rows)));
    return { time, value: new Float64Array(cut(8 * rows)) };
  });
  if (at !== bytes.byteLength) throw new Error('it is longer than it says');
  const records = header.beams.map(({ rows: _rows, wide: _wide, beside, intervalSeconds, ...beam }, place) => {
    const trace = traces[place] as BeamRecord['trace'];
    const besides = channelNames.flatMap((name) => {
      const row = beside[name];
      if (row === undefined) return [];
      const channel = channels[row];
      if (!channel) throw new Error(`beam "${beam.id}": its ${name} is not there`);
      return [[name, channel] as const];
    });
    return {
      ...beam,
      intervalSeconds: intervalSeconds ?? Number.NaN,
      trace,
      ...Object.fromEntries(besides),
    } as BeamRecord;
  });
  return { packed: { records, input: header.input as InputTold }, reading: header.reading };
}

/** Rows whose least, greatest and spread are not those of one sample at their level: 1, else 0. */
function wideRows({ trace: { level, low, high, spread } }: BeamRecord): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(level, (value, row) => {
    const flat = Math.fround(value);
    return low[row] === flat && high[row] === flat && spread[row] === 0 ? 0 : 1;
  });
}

/** The values of the wide rows put in their places among those of the others. */
function spreadOut(values: Float32Array, wide: Uint8Array, among: Float32Array): Float32Array {
  const column = among.slice();
  let next = 0;
  for (let row = 0; row < column.length; row++) if (wide[row] === 1) column[row] = values[next++] as number;
  return column;
}

/** Each instant as its difference from the one before, as that one will be summed up again. */
function differences(times: Float64Array): Float64Array<ArrayBuffer> {
  let before = 0;
  return Float64Array.from(times, (time) => {
    const more = time - before;
    before += more;
    return more;
  });
}

function summed(differences: Float64Array): Float64Array {
  let sum = 0;
  return differences.map((more) => {
    sum += more;
    return sum;
  });
}

/** The first row that breaks what always holds of a trace; -1: none. */
function brokenRow({ time, until, level, low, high, count }: BeamRecord['trace']): number {
  let last = Number.NEGATIVE_INFINITY;
  for (let row = 0; row < time.length; row++) {
    const start = time[row] as number;
    const end = until[row] as number;
    const middle = Math.fround(level[row] as number);
    const holds =
      start > last &&
      start <= end &&
      Number.isFinite(end) &&
      (low[row] as number) <= middle &&
      middle <= (high[row] as number) &&
      (count[row] as number) >= 1;
    if (!holds) return row;
    last = end;
  }
  return -1;
}
