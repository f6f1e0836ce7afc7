import { day } from '../columns/index.js';
import type { Beam, Site } from '../site/index.js';
import { type CleanAirFound, cleanAirFound, cleanAirTold, daysLookedAt } from './cleanAir.js';
import { heldRows } from './heldRows.js';
import type { InputReport } from './inputNotes.js';
import type { LogSources, ReadOptions } from './logSource.js';
import { RawRows } from './rawRows.js';
import { readRows } from './readRows.js';
import type { RowBlock, RowColumns, RowSink } from './rowBlock.js';
import { coveredPower } from './scale.js';
import { IntervalSeen } from './usualInterval.js';

/** Most samples that are kept back while the clean-air reading of a beam is sought. */
const mostSamples = 4_000_000;

/** What had to be known of a beam before its first sample could be weighed. */
export interface BeamFacts {
  /** The beam of the site; a clean-air reading that it lacks is filled in from the log. */
  readonly beam: Beam;
  /** Usual interval between samples [s]; 0 of fewer than two. */
  readonly intervalSeconds: number;
  /** What had to be assumed to read the log, in words. */
  readonly assumed: readonly string[];
}

/** Takes the samples of one beam. */
export interface BeamTap {
  /** Usable samples, in order of time: instants [ms] and readings [signalUnit]. Only valid until it returns. */
  rows(time: Float64Array, readings: Float64Array, count: number): void;
  /** Called once, with the last instant of the whole log [ms]. */
  end(lastTime: number): void;
}

/**
 * Reads a log sample by sample, beam by beam, none condensed. Interval and clean-air reading are known before the
 * first sample comes: the beginning of the log is kept back until they are, a bounded part of it.
 *
 * @param sources the log, or the files that are one log
 * @param site what it is a log of
 * @param begin called once for each beam, in any order; what it gives takes the beam's samples
 * @returns lines read, lines dropped, and what was mended
 * @throws UsageError where the log cannot be used: it names the file, the line or the column, and what to do
 * @example await readBeams(logOfText(csv), site, ({ beam }) => ({ rows: (time, readings) => { … }, end() {} }));
 */
export async function readBeams(
  sources: LogSources,
  site: Site,
  begin: (facts: BeamFacts) => BeamTap,
  options: ReadOptions = {},
): Promise<InputReport> {
  return readRows(sources, site, new BeamSink(site, begin), options);
}

class BeamSink implements RowSink {
  private beams: { readonly column: number; readonly samples: BeamSamples }[] = [];
  private lastTime = Number.NaN;

  constructor(
    private readonly site: Site,
    private readonly begin: (facts: BeamFacts) => BeamTap,
  ) {}

  header({ signal }: RowColumns): void {
    const { site, begin } = this;
    const most = mostSamples / Math.max(1, site.beams.length);
    this.beams = site.beams.map((beam, row) => ({
      column: signal[row] as number,
      samples: new BeamSamples(beam, site.sampling === 'on-change', most, begin),
    }));
  }

  rows({ time, columns, count }: RowBlock): void {
    for (const { column, samples } of this.beams) samples.add(time, columns[column] as Float64Array, count);
    this.lastTime = time[count - 1] ?? this.lastTime;
  }

  end(): void {
    for (const { samples } of this.beams) samples.end(this.lastTime);
  }
}

/** One beam's samples, kept back until its interval and its clean-air reading are known. */
class BeamSamples {
  private tap: BeamTap | undefined;
  private readonly interval = new IntervalSeen();
  private readonly kept = new RawRows(1);
  private readonly search: CleanAirSearch | undefined;
  private time = new Float64Array(0);
  private readings = new Float64Array(0);

  constructor(
    private readonly beam: Beam,
    holds: boolean,
    most: number,
    private readonly begin: (facts: BeamFacts) => BeamTap,
  ) {
    this.search = beam.cleanAir === undefined ? new CleanAirSearch(holds, most, coveredPower(beam)) : undefined;
  }

  add(time: Float64Array, readings: Float64Array, count: number): void {
    const usable = this.keepUsable(time, readings, count);
    if (this.tap !== undefined) {
      this.tap.rows(this.time, this.readings, usable);
      return;
    }
    this.interval.see(this.time, this.readings, usable);
    this.search?.add(this.time, this.readings, usable);
    this.kept.add(this.time, [this.readings], 0, usable);
    if (this.interval.full && this.search?.done !== false) this.start();
  }

  end(lastTime: number): void {
    (this.tap ?? this.start()).end(lastTime);
  }

  /** Copies the samples that are not missing into `time` and `readings`. */
  private keepUsable(time: Float64Array, readings: Float64Array, count: number): number {
    if (this.time.length < count) {
      this.time = new Float64Array(count);
      this.readings = new Float64Array(count);
    }
    let usable = 0;
    for (let row = 0; row < count; row++) {
      const reading = readings[row] as number;
      if (Number.isNaN(reading)) continue;
      this.time[usable] = time[row] as number;
      this.readings[usable++] = reading;
    }
    return usable;
  }

  private start(): BeamTap {
    const found = this.search?.found();
    const tap = this.begin({
      beam: found === undefined ? this.beam : { ...this.beam, cleanAir: found.reading },
      intervalSeconds: this.interval.seconds(),
      assumed: found === undefined ? [] : [cleanAirTold(found, this.beam)],
    });
    for (const { time, columns, count } of this.kept.takeRows()) tap.rows(time, columns[0] as Float64Array, count);
    this.tap = tap;
    return tap;
  }
}

/** The beginning of a beam's log, among which its clean-air reading is sought. */
class CleanAirSearch {
  private readonly rows = new RawRows(1);
  private readonly held;
  private first = Number.NaN;
  done = false;

  constructor(
    holds: boolean,
    private readonly most: number,
    private readonly covered: number,
  ) {
    this.held = holds ? heldRows() : undefined;
  }

  add(time: Float64Array, readings: Float64Array, count: number): void {
    if (this.done || count === 0) return;
    if (Number.isNaN(this.first)) this.first = time[0] as number;
    if (this.held === undefined) this.rows.add(time, [readings], 0, count);
    else
      this.held.add({ time, columns: [readings], count }, (rows) =>
        this.rows.add(rows.time, rows.columns, 0, rows.count),
      );
    const last = time[count - 1] as number;
    this.done = last - this.first >= daysLookedAt * day || this.rows.count >= this.most;
  }

  found(): CleanAirFound | undefined {
    const { time, value } = this.rows.usable(0, this.rows.times());
    return cleanAirFound(time, value, this.covered);
  }
}
