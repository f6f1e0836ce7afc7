import { UsageError } from './columns/index.js';
import {
  type BeamFacts,
  type BeamTap,
  type InputReport,
  type LogSources,
  type ReadOptions,
  readBeams,
} from './log/index.js';
import { placedBelowCeiling } from './numbers/index.js';
import {
  type FireHall,
  fireCurves,
  type NuisanceGrid,
  type Places,
  type TradeOff,
  tradeOffOf,
  type WatchedFire,
} from './planning/index.js';
import { type AlarmGrid, alarmGrid, readingObscuration } from './response/index.js';
import { type Beam, bearsOnResponse, type Site, type Visit } from './site/index.js';

/** What is weighed, beside the site and its log. */
export interface TradeOffOptions extends ReadOptions {
  /** Obscuration [%], rising; left out: 20 from 5 to 90. */
  readonly thresholds?: readonly number[];
  /** Delays [s], rising; left out: 20 from 0 to 120. */
  readonly delays?: readonly number[];
  /** The hall of the fires. */
  readonly hall: FireHall;
  /** Where the fires may stand, from the beam [m]. */
  readonly places: Places;
  readonly fires: readonly WatchedFire[];
  /** Only this beam; left out: all. */
  readonly beam?: string;
}

/** Both costs of every setting, beam by beam, ready for `JSON.stringify`. */
export interface TradeOffJson {
  readonly format: 'beamkeep-tradeoff/1';
  readonly beams: readonly TradeOff[];
  /** What the reading had to mend or drop; null without a log. */
  readonly input: InputReport | null;
}

/** Thresholds that are tried where none are given [%]. */
export const usualThresholds: readonly number[] = [
  5, 9, 12, 15, 18, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 85, 90,
];

/** Delays that are tried where none are given [s]. */
export const usualDelays: readonly number[] = [
  0, 1, 2, 3, 5, 7, 10, 13, 16, 20, 25, 30, 35, 40, 50, 60, 75, 90, 105, 120,
];

/**
 * Weighs threshold and delay: how late the chosen fires are found, and how large, against the nuisance that the site's
 * own log would have given. One pass over the log, every sample looked at, memory that does not grow with it.
 *
 * @param sources the log, one file or several; null: fires only
 * @param site whose beams are weighed; a beam without a height is taken to hang under the ceiling
 * @param options axes, hall, places, fires
 * @throws UsageError where the log cannot be used, for axes that do not rise, for a beam that does not exist
 *
 * Samples during visits that disturb a beam (tests, cleaning, re-aiming, isolation) are left out.
 */
export async function tradeOff(
  sources: LogSources | null,
  site: Site,
  options: TradeOffOptions,
): Promise<TradeOffJson> {
  const beams = site.beams.filter(({ id }) => options.beam === undefined || id === options.beam);
  if (beams.length === 0) {
    throw new UsageError(
      `beam "${options.beam}" is not in the site: it has ${site.beams.map(({ id }) => id).join(', ')}`,
    );
  }
  const fires = new Map(beams.map((beam) => [beam.id, curvesOf(beam, options)] as const));
  const counted = new Map<string, Counted>();
  const input =
    sources === null
      ? null
      : await readBeams(
          sources,
          { ...site, beams },
          (facts) => nuisanceTap(facts, site, axesOf(options), (found) => counted.set(facts.beam.id, found)),
          options,
        );
  return {
    format: 'beamkeep-tradeoff/1',
    beams: beams.map((beam) => {
      const found = counted.get(beam.id);
      const { curves, assumed } = fires.get(beam.id) ?? curvesOf(beam, options);
      return tradeOffOf({
        beam: beam.id,
        ...axesOf(options),
        current: { threshold: beam.alarmThreshold, delay: beam.alarmDelay },
        faultThreshold: beam.faultThreshold,
        curves,
        ...(found && { nuisance: found.nuisance }),
        ceiling: options.hall.ceiling,
        assumed: [...beam.assumed.filter(bearsOnResponse), ...assumed, ...(found?.assumed ?? [])],
      });
    }),
    input,
  };
}

const axesOf = ({ thresholds = usualThresholds, delays = usualDelays }: TradeOffOptions) => ({ thresholds, delays });

function curvesOf(beam: Beam, { hall, places, fires }: TradeOffOptions) {
  const below = placedBelowCeiling.value;
  const height = beam.height ?? hall.ceiling - below;
  return {
    curves: fires.map((each) => fireCurves({ ...beam, height }, hall, places, each)),
    assumed: beam.height === undefined ? [`height ${Number(height.toFixed(2))} m, ${below} m below the ceiling`] : [],
  };
}

/** What the log gave for one beam. */
interface Counted {
  readonly nuisance: NuisanceGrid;
  readonly assumed: readonly string[];
}

const disturbing: ReadonlySet<Visit['work']> = new Set(['tested', 'cleaned', 'realigned', 'isolated']);

function nuisanceTap(
  { beam, intervalSeconds, assumed }: BeamFacts,
  { sampling, visits }: Site,
  alarms: { readonly thresholds: readonly number[]; readonly delays: readonly number[] },
  done: (found: Counted) => void,
): BeamTap {
  const counter = alarmGrid(
    beam,
    { alarms, faults: { thresholds: [beam.faultThreshold], delays: [beam.faultDelay] } },
    { sampling, intervalSeconds },
  );
  const obscuration = readingObscuration(beam);
  const away = visits
    .filter((visit) => disturbing.has(visit.work) && (visit.beam === undefined || visit.beam === beam.id))
    .flatMap(({ time, until }) => (until === undefined ? [] : [{ from: time, to: until }]))
    .sort((a, b) => a.from - b.from);
  let next = 0;
  let left = 0;
  return {
    rows(time, readings, count) {
      for (let row = 0; row < count; row++) {
        const now = time[row] as number;
        while (next < away.length && (away[next] as { to: number }).to < now) next++;
        if (now >= (away[next]?.from ?? Number.POSITIVE_INFINITY)) left++;
        else counter.feed(now, obscuration(readings[row] as number));
      }
    },
    end(lastTime) {
      done({
        nuisance: nuisanceOf(counter.result(lastTime)),
        assumed: [...assumed, ...(left === 0 ? [] : [`${left} samples during visits left out of the nuisance`])],
      });
    },
  };
}

const nuisanceOf = ({ years, confidence, alarms }: AlarmGrid): NuisanceGrid => ({
  years,
  confidence,
  cells: alarms.cells,
});
