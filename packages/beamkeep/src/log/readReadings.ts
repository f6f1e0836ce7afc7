import { UsageError } from '../columns/index.js';
import { type Beam, linearReading, type Site } from '../site/index.js';
import type { InputReport } from './inputNotes.js';
import type { LogSources, ReadOptions } from './logSource.js';
import { smallestStep } from './quantum.js';
import { readBeams } from './readBeams.js';
import { fullScaleOf, linearStep } from './scale.js';

/** Most readings of a test: six weeks at one a second. A test is looked at as a whole, not condensed. */
const mostReadings = 4_000_000;
/** Different values from which the step of the scale is told. */
const valuesLookedAt = 4096;

/** Readings of one beam over a stretch of a log, as they were logged. */
export interface BeamReadings {
  /** The beam; a clean-air reading that the site lacks is filled in from the log. */
  readonly beam: Beam;
  /** Instants of the usable readings [ms since 1970-01-01 UTC], rising. */
  readonly time: Float64Array;
  /** [signalUnit] */
  readonly readings: Float64Array;
  /** The same in received power: proportional to light, 1 for no loss where the unit is obscuration or decibels. */
  readonly power: Float64Array;
  /** Smallest step of the scale near its highest reading [unit of power]; 0 where it is finer than can be told. */
  readonly powerStep: number;
  /** Usual interval between samples [s]; 0 of fewer than two. */
  readonly intervalSeconds: number;
  /** Last instant of the log, within the stretch asked for [ms]. */
  readonly end: number;
  /** What had to be assumed to read the log, in words. */
  readonly assumed: readonly string[];
  readonly input: InputReport;
}

/** The beam and the stretch that are asked for. */
export interface ReadingsQuestion {
  /** The beam's `id`; may be left out where the site has one only. */
  readonly beam?: string | undefined;
  /** First and last instant [ms]; all of the log when left out. */
  readonly from?: number | undefined;
  readonly to?: number | undefined;
}

/**
 * Beam of a site by its id.
 *
 * @throws UsageError where there is none of that id, or none was named and there are several
 */
export function beamNamed({ beams }: Site, id: string | undefined): Beam {
  const ids = beams.map((beam) => beam.id).join(', ');
  if (id === undefined && beams.length > 1)
    throw new UsageError(`the site has ${beams.length} beams: name one of ${ids} (--beam)`);
  const found = id === undefined ? beams[0] : beams.find((beam) => beam.id === id);
  if (found === undefined) throw new UsageError(`"${id}" is no beam of this site: name one of ${ids} (--beam)`);
  return found;
}

/** A beam without the columns beside its signal: a test log need not hold them. */
function signalOnly({
  temperatureColumn: _,
  humidityColumn: __,
  gainColumn: ___,
  plantColumn: ____,
  ...beam
}: Beam): Beam {
  return beam;
}

/**
 * Reads every reading of one beam, as logged. The log need not hold the other beams of the site.
 *
 * @param sources the log, or the files that are one log
 * @param site what it is a log of
 * @param question which beam, from when to when
 * @throws UsageError where the log cannot be used, or holds more than a test
 * @example const { time, readings } = await readReadings(logOfText(csv), site, { beam: 'B1' });
 */
export async function readReadings(
  sources: LogSources,
  site: Site,
  { beam: id, from = Number.NEGATIVE_INFINITY, to = Number.POSITIVE_INFINITY }: ReadingsQuestion,
  options: ReadOptions = {},
): Promise<BeamReadings> {
  const wanted = beamNamed(site, id);
  const times: number[] = [];
  const values: number[] = [];
  const steps = new Map<number, number>();
  let facts = { beam: wanted, intervalSeconds: 0, assumed: [] as readonly string[] };
  let end = Number.NaN;
  const input = await readBeams(
    sources,
    { ...site, beams: [signalOnly(wanted)] },
    (known) => {
      facts = { ...known, beam: { ...wanted, ...known.beam } };
      return {
        rows(time, readings, count) {
          for (let row = 0; row < count; row++) {
            const at = time[row] as number;
            if (at < from || at > to) continue;
            const reading = readings[row] as number;
            times.push(at);
            values.push(reading);
            if (steps.size < valuesLookedAt || steps.has(reading)) steps.set(reading, (steps.get(reading) ?? 0) + 1);
          }
          if (times.length > mostReadings)
            throw new UsageError(
              `more than ${mostReadings / 1e6} million readings are no test: name its time with --from and --to`,
            );
        },
        end: (lastTime) => {
          end = Math.min(lastTime, to);
        },
      };
    },
    options,
  );
  if (times.length === 0)
    throw new UsageError(`beam ${wanted.id}: the log holds no usable reading between --from and --to`);
  const readings = Float64Array.from(values);
  const power = readings.map((reading) => linearReading(reading, facts.beam.signalUnit));
  const highest = power.reduce((most, value) => Math.max(most, value), 0);
  return {
    ...facts,
    time: Float64Array.from(times),
    readings,
    power,
    powerStep: linearStep(smallestStep(steps, fullScaleOf(facts.beam)), facts.beam, highest),
    end,
    input,
  };
}
