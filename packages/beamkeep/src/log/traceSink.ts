import { type BeamRecord, type Channel, minute, type Trace } from '../columns/index.js';
import type { Beam, Site } from '../site/index.js';
import { ChannelMeans } from './channelMeans.js';
import { Condenser } from './condenser.js';
import { heldRows } from './heldRows.js';
import { linearColumns } from './linearColumns.js';
import { ScaleSeen } from './quantum.js';
import { RawRows } from './rawRows.js';
import type { RowBlock, RowColumns, RowSink } from './rowBlock.js';
import { fullScaleOf, linearStep, type Scale, scaleOf } from './scale.js';
import { singleSamples, traceOfBuckets, traceOfSamples } from './traceOf.js';
import { IntervalSeen } from './usualInterval.js';

/*
 * Condenses a log. Up to a number of readings every one is kept; when that is passed, what was kept goes through the
 * condenser as if it came only now, and the rest follows it. So a log's record depends on the log alone.
 */

/** How much of a log is kept as it is; a test may lower it, so that a short log shows what a long one does. */
export interface TraceLimits {
  /** Most readings of all beams of which every one is kept. */
  readonly readings: number;
  /** Beyond that: most buckets of all beams; where there would be more, they are made wider. */
  readonly buckets: number;
  /** Beyond that: most samples of eventful minutes that are kept. */
  readonly eventful: number;
}

export const traceLimits: TraceLimits = { readings: 4_000_000, buckets: 1_500_000, eventful: 250_000 };

/** Widths that buckets may have: the first that usually holds eight samples. */
const bucketWidths = [1, 2, 5, 10, 15, 30, 60].map((minutes) => minutes * minute);
const samplesOfABucket = 8;

/** One beam of the site and what was seen of its readings. */
interface BeamSeen {
  readonly beam: Beam;
  /** Of the rows. */
  readonly column: number;
  readonly scale: ScaleSeen;
  readonly interval: IntervalSeen;
}

/** Takes the rows of a log and makes one record a beam of them. */
export class TraceSink implements RowSink {
  private beams: readonly BeamSeen[] = [];
  private channels = new Map<number, ChannelMeans>();
  private columnOf: RowColumns['of'] = () => undefined;
  private stated = new Float64Array(0);
  private raw: RawRows;
  private condensed: { readonly condenser: Condenser; readonly scales: readonly Scale[] } | undefined;
  private readonly linear;
  private readonly held;
  private readonly mostRows: number;

  constructor(
    private readonly site: Site,
    private readonly limits: TraceLimits = traceLimits,
  ) {
    this.raw = new RawRows(site.beams.length);
    this.linear = linearColumns(site.beams);
    this.held = site.sampling === 'on-change' ? heldRows() : undefined;
    this.mostRows = Math.floor(limits.readings / Math.max(1, site.beams.length));
  }

  header(columns: RowColumns): void {
    this.columnOf = columns.of;
    this.stated = columns.stated;
    this.beams = this.site.beams.map((beam, at) => ({
      beam,
      column: columns.signal[at] as number,
      scale: new ScaleSeen(fullScaleOf(beam)),
      interval: new IntervalSeen(),
    }));
    for (const { temperatureColumn, humidityColumn, gainColumn, plantColumn } of this.site.beams) {
      for (const name of [temperatureColumn, humidityColumn, gainColumn, plantColumn]) {
        const column = columns.of(name);
        if (column !== undefined) this.channels.set(column, new ChannelMeans(minute));
      }
    }
  }

  rows(block: RowBlock): void {
    for (const { column, scale, interval } of this.beams) {
      const readings = block.columns[column] as Float64Array;
      if (!scale.full) scale.see(readings, block.count);
      if (!interval.full) interval.see(block.time, readings, block.count);
    }
    if (this.held === undefined) this.take(block);
    else this.held.add(block, (rows) => this.take(rows));
  }

  private take({ time, columns, count }: RowBlock): void {
    for (const [column, means] of this.channels) means.add(time, columns[column] as Float64Array, count);
    const readings = this.linear(
      this.beams.map(({ column }) => columns[column] as Float64Array),
      count,
    );
    let kept = 0;
    if (this.condensed === undefined) {
      kept = Math.min(count, this.mostRows - this.raw.count);
      this.raw.add(time, readings, 0, kept);
      if (kept === count) return;
      this.condensed = this.condense();
    }
    this.condensed.condenser.add(time, readings, kept, count);
  }

  /** Goes over from keeping every sample to condensing them. */
  private condense() {
    const scales = this.scales();
    const longest = Math.max(...this.beams.map(({ interval }) => interval.seconds()));
    const width = bucketWidths.find((width) => width >= samplesOfABucket * longest * 1000);
    const condenser = new Condenser(
      width ?? (bucketWidths.at(-1) as number),
      this.beams.map(({ beam, scale }, at) => {
        const { clean, covered } = scales[at] as Scale;
        return {
          step: linearStep(scale.step(), beam, clean),
          thresholds: [beam.alarmThreshold, beam.faultThreshold].map(
            (percent) => covered + (clean - covered) * (1 - percent / 100),
          ),
        };
      }),
      this.limits.buckets,
      this.limits.eventful,
    );
    for (const { time, columns, count } of this.raw.takeRows()) condenser.add(time, columns, 0, count);
    return { condenser, scales };
  }

  private scales(times = this.timesForScales()): Scale[] {
    return this.beams.map(({ beam }, at) => {
      const { time, value } = beam.cleanAir === undefined ? this.raw.usable(at, times) : nothing;
      return scaleOf(beam, time, value);
    });
  }

  /** Only a beam whose clean air nobody has stated is looked through for it. */
  private timesForScales(): Float64Array {
    return this.beams.some(({ beam }) => beam.cleanAir === undefined) ? this.raw.times() : nothing.time;
  }

  end(): void {
    this.condensed?.condenser.end();
  }

  /** One record a beam, in the order of the site; asked for once, when all rows have come. */
  records(): BeamRecord[] {
    const times = this.raw.times();
    const scales = this.condensed?.scales ?? this.scales(times);
    const channels = new Map([...this.channels].map(([column, means]) => [column, means.channel()]));
    const channel = (name: string | undefined): Channel | undefined => {
      const column = this.columnOf(name);
      return column === undefined ? undefined : channels.get(column);
    };
    const same = singleSamples(this.raw.count);
    const trace = (at: number, own: Scale): Trace => {
      if (this.condensed !== undefined) return traceOfBuckets(this.condensed.condenser, at, own);
      const { time, value } = this.raw.usable(at, times);
      return traceOfSamples(time, value, own, same);
    };
    return this.beams.map(({ beam, scale, interval, column }, at) => {
      const own = scales[at] as Scale;
      const optional = {
        temperature: channel(beam.temperatureColumn),
        humidity: channel(beam.humidityColumn),
        gain: channel(beam.gainColumn),
        plant: channel(beam.plantColumn),
      };
      return {
        id: beam.id,
        trace: trace(at, own),
        intervalSeconds: interval.seconds(),
        ...(beam.cleanAir === undefined ? { cleanAir: own.clean } : {}),
        ...(this.held === undefined ? {} : { logged: this.stated[column] ?? 0 }),
        quantum: linearStep(scale.step(), beam, own.clean) / (own.clean - own.covered),
        ...Object.fromEntries(Object.entries(optional).filter(([, logged]) => logged !== undefined)),
        assumed: own.assumed,
      };
    });
  }
}

const nothing = { time: new Float64Array(0), value: new Float64Array(0) };
