import { type BeamRecord, type Channel, minute, type Trace } from '../columns/index.js';
import { type Beam, linearReading, type Site } from '../site/index.js';
import { emptyBucket } from './bucketRows.js';
import { ChannelMeans } from './channelMeans.js';
import { cleanAirFound, cleanAirTold } from './cleanAir.js';
import { Condenser } from './condenser.js';
import { heldRows } from './heldRows.js';
import { ScaleSeen } from './quantum.js';
import { RawRows } from './rawRows.js';
import type { RowBlock, RowColumns, RowSink } from './rowBlock.js';
import { IntervalSeen } from './usualInterval.js';

/** Most readings of all beams of which every one is kept. */
const mostReadings = 4_000_000;
/** Most samples of eventful minutes that are kept beyond that. */
const mostEventful = 600_000;

/** Widths that buckets may have: the first that holds some samples. */
const bucketWidths = [1, 2, 5, 10, 15, 30, 60].map((minutes) => minutes * minute);

/** What each beam of the site takes from the rows. */
interface BeamSeen {
  readonly scale: ScaleSeen;
  readonly interval: IntervalSeen;
  usable: number;
}

/** Limits that a test may lower, so that a short log shows what a long one does. */
export interface TraceLimits {
  readonly mostReadings?: number;
  readonly mostEventful?: number;
}

/** Condenses the rows of a log into one record a beam. */
export class TraceSink implements RowSink {
  private columns: RowColumns | undefined;
  /** Signal columns, each once, and the unit they are logged in. */
  private signals: { readonly column: number; readonly beam: Beam; readonly seen: BeamSeen }[] = [];
  private channels = new Map<number, ChannelMeans>();
  private raw = new RawRows(0);
  private condenser: Condenser | undefined;
  private linear: Float64Array[] = [];
  private readonly mostRows: number;
  private readonly room: number;
  private readonly held;

  constructor(
    private readonly site: Site,
    limits: TraceLimits = {},
  ) {
    this.mostRows = (limits.mostReadings ?? mostReadings) / Math.max(1, site.beams.length);
    this.room = limits.mostEventful ?? mostEventful;
    this.held = site.sampling === 'on-change' ? heldRows() : undefined;
  }

  header(columns: RowColumns): void {
    this.columns = columns;
    this.signals = this.site.beams.map((beam, row) => ({
      column: columns.signal[row] as number,
      beam,
      seen: { scale: new ScaleSeen(), interval: new IntervalSeen(), usable: 0 },
    }));
    const { signals } = this;
    columns.names.forEach((_, column) => {
      if (this.isChannel(column)) this.channels.set(column, new ChannelMeans(minute));
    });
    this.raw = new RawRows(signals.length);
  }

  private isChannel(column: number): boolean {
    const name = this.columns?.names[column];
    return this.site.beams.some((beam) =>
      [beam.temperatureColumn, beam.humidityColumn, beam.gainColumn, beam.plantColumn].includes(name),
    );
  }

  rows(block: RowBlock): void {
    for (const { column, seen } of this.signals) {
      const readings = block.columns[column] as Float64Array;
      if (!seen.scale.full) seen.scale.see(readings, block.count);
      if (!seen.interval.full) seen.interval.see(block.time, readings, block.count);
      if (this.held !== undefined) {
        for (let row = 0; row < block.count; row++) if (!Number.isNaN(readings[row] as number)) seen.usable++;
      }
    }
    const { held } = this;
    if (held === undefined) this.take(block);
    else held.add(block, (rows) => this.take(rows));
  }

  private take(block: RowBlock): void {
    const { time, count } = block;
    for (const [column, means] of this.channels) means.add(time, block.columns[column] as Float64Array, count);
    const readings = this.signals.map(({ column, beam }, s) =>
      this.linearColumn(block.columns[column] as Float64Array, count, beam, s),
    );
    if (this.condenser !== undefined) {
      this.condenser.add(time, readings, count);
      return;
    }
    const room = Math.max(0, Math.min(count, this.mostRows - this.raw.count));
    this.raw.add(time, readings, 0, room);
    if (room < count) {
      const condenser = this.fold();
      condenser.add(
        time.subarray(room),
        readings.map((column) => column.subarray(room)),
        count - room,
      );
    }
  }

  /** A column of readings proportional to received power: the column itself where the unit is. */
  private linearColumn(readings: Float64Array, count: number, { signalUnit }: Beam, s: number): Float64Array {
    if (signalUnit !== 'decibels' && signalUnit !== 'obscuration') return readings;
    let linear = this.linear[s];
    if (linear === undefined || linear.length < count) {
      linear = new Float64Array(count);
      this.linear[s] = linear;
    }
    for (let row = 0; row < count; row++) linear[row] = linearReading(readings[row] as number, signalUnit);
    return linear;
  }

  /** Goes over from keeping every sample to condensing: what was kept so far is condensed by the same rule. */
  private fold(): Condenser {
    const times = this.raw.times();
    const scales = this.signals.map((_, s) => this.scaleOf(s, times));
    const longest = Math.max(...this.signals.map(({ seen }) => seen.interval.seconds()));
    const width = bucketWidths.find((width) => width >= 8000 * longest) ?? (bucketWidths.at(-1) as number);
    const condenser = new Condenser(
      width,
      this.signals.map(({ seen, beam }, s) => linearStep(seen.scale.step(), beam, scales[s]?.clean ?? 1)),
      scales.map(({ clean, covered }, s) => {
        const { alarmThreshold, faultThreshold } = (this.signals[s] as { beam: Beam }).beam;
        return [alarmThreshold, faultThreshold].map((percent) => covered + (clean - covered) * (1 - percent / 100));
      }),
      this.room,
    );
    for (const { time, columns, count } of this.raw.takeRows()) condenser.add(time, columns, count);
    this.condenser = condenser;
    this.scales = scales;
    return condenser;
  }

  private scales: readonly Scale[] | undefined;

  private scaleOf(s: number, times: Float64Array): Scale {
    const { beam } = this.signals[s] as { beam: Beam };
    const covered = beam.covered === undefined ? 0 : linearReading(beam.covered, beam.signalUnit);
    if (beam.cleanAir !== undefined)
      return { clean: linearReading(beam.cleanAir, beam.signalUnit), covered, assumed: [] };
    const { time, value } = this.raw.usable(s, times);
    const found = cleanAirFound(time, value, value.length);
    if (found === undefined) return { clean: 1, covered, assumed: [] };
    return { clean: found.reading, covered, assumed: [cleanAirTold(found, beam)] };
  }

  end(): void {
    this.condenser?.end();
  }

  /** One record a beam; asked for once, when all rows have come. */
  records(): BeamRecord[] {
    const times = this.raw.times();
    const scales = this.scales ?? this.signals.map((_, s) => this.scaleOf(s, times));
    const channels = new Map([...this.channels].map(([column, means]) => [column, means.channel()]));
    const channel = (name: string | undefined): Channel | undefined => {
      const column = this.columns?.of(name);
      return column === undefined ? undefined : channels.get(column);
    };
    return this.signals.map(({ beam, seen }, s) => {
      const scale = scales[s] as Scale;
      const trace =
        this.condenser === undefined
          ? sampleTrace(this.raw.usable(s, times), scale)
          : bucketTrace(this.condenser, s, scale);
      const optional = {
        temperature: channel(beam.temperatureColumn),
        humidity: channel(beam.humidityColumn),
        gain: channel(beam.gainColumn),
        plant: channel(beam.plantColumn),
      };
      return {
        id: beam.id,
        trace,
        intervalSeconds: seen.interval.seconds(),
        quantum: linearStep(seen.scale.step(), beam, scale.clean) / (scale.clean - scale.covered),
        ...Object.fromEntries(Object.entries(optional).filter(([, channel]) => channel !== undefined)),
        assumed: scale.assumed,
      };
    });
  }
}

/** Where a beam's readings lie: proportional to received power. */
interface Scale {
  readonly clean: number;
  readonly covered: number;
  readonly assumed: readonly string[];
}

/** A step of the scale near clean air, proportional to received power. */
function linearStep(step: number, { signalUnit }: Beam, clean: number): number {
  if (signalUnit === 'decibels') return clean * (10 ** (step / 10) - 1);
  return signalUnit === 'obscuration' ? step / 100 : step;
}

/** A trace that holds every sample. */
function sampleTrace(
  { time, value }: { readonly time: Float64Array; readonly value: Float64Array },
  { clean, covered }: Scale,
): Trace {
  const level = value.map((reading) => (reading - covered) / (clean - covered));
  const single = Float32Array.from(level);
  return {
    time,
    until: time,
    level,
    low: single,
    high: single,
    spread: new Float32Array(level.length),
    count: new Uint32Array(level.length).fill(1),
  };
}

/** A trace of buckets, and of the samples of eventful ones. */
function bucketTrace({ buckets, kept }: Condenser, beam: number, { clean, covered }: Scale): Trace {
  const rows = buckets[beam];
  const length = (rows?.length ?? 0) + kept.extraRows(beam);
  const span = clean - covered;
  const trace = {
    time: new Float64Array(length),
    until: new Float64Array(length),
    level: new Float64Array(length),
    low: new Float32Array(length),
    high: new Float32Array(length),
    spread: new Float32Array(length),
    count: new Uint32Array(length),
  };
  const bucket = emptyBucket();
  let row = 0;
  for (let index = 0; index < (rows?.length ?? 0); index++) {
    const samples = kept.of(beam, index);
    if (samples !== undefined) {
      samples.value.forEach((reading, at) => {
        const level = (reading - covered) / span;
        const instant = samples.time[at] as number;
        trace.time[row] = instant;
        trace.until[row] = instant;
        trace.level[row] = level;
        trace.low[row] = level;
        trace.high[row] = level;
        trace.count[row] = 1;
        row++;
      });
      continue;
    }
    rows?.read(index, bucket);
    trace.time[row] = bucket.time;
    trace.until[row] = bucket.until;
    trace.level[row] = (bucket.middle - covered) / span;
    trace.low[row] = (bucket.low - covered) / span;
    trace.high[row] = (bucket.high - covered) / span;
    trace.spread[row] = bucket.spread / span;
    trace.count[row] = bucket.count;
    row++;
  }
  rows?.clear();
  return trace;
}
