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
 * Thresholds and delays to be tried for a site: the given or usual ones, and those that its beams have now, so that the
 * current setting of each stands in the grid.
 *
 * @param site whose beams are weighed
 * @param given axes, rising; the usual ones where left out
 * @example triedSettings(site, { thresholds: [25, 50] }).thresholds // [25, 35, 50] where the beams stand at 35 %
 */
export function triedSettings(
  { beams }: Site,
  { thresholds = usualThresholds, delays = usualDelays }: Pick<TradeOffOptions, 'thresholds' | 'delays'> = {},
): { readonly thresholds: readonly number[]; readonly delays: readonly number[] } {
  // Put in before the first greater one: axes that do not rise are left so, and refused where they are used.
  const joined = (tried: readonly number[], own: readonly number[]): readonly number[] =>
    own.reduce((axis, value) => {
      const after = axis.findIndex((each) => each > value);
      return axis.includes(value) ? axis : axis.toSpliced(after < 0 ? axis.length : after, 0, value);
    }, tried);
  return {
    thresholds: joined(
      thresholds,
      beams.map(({ alarmThreshold }) => alarmThreshold),
    ),
    delays: joined(
      delays,
      beams.map(({ alarmDelay }) => alarmDelay),
    ),
  };
}

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
  const beams = chosenBeams(site, options);
  // A hall or a fire that cannot be is told before a long log is read.
  const fires = new Map(beams.map((beam) => [beam.id, curvesOf(beam, options)] as const));
  const counted = sources === null ? null : await countNuisance(sources, site, options);
  return weighed(beams, counted, options, fires);
}

/** What one pass over a log gave: the nuisance of every setting, beam by beam. */
export interface CountedNuisance {
  readonly thresholds: readonly number[];
  readonly delays: readonly number[];
  readonly beams: ReadonlyMap<string, BeamNuisance>;
  readonly input: InputReport;
}

/** Nuisance of one beam, and what had to be assumed to count it. */
export interface BeamNuisance {
  readonly nuisance: NuisanceGrid;
  readonly assumed: readonly string[];
}

/**
 * Counts the alarms that a log would have given at every threshold and delay, in one pass: the half of a trade-off that
 * does not depend on hall and fires, so that these can be changed without reading again (`tradeOffCounted`).
 *
 * @param sources the log, one file or several
 * @param site whose beams are counted
 * @param options axes, beam, progress and cancelling
 * @throws UsageError where the log cannot be used, for axes that do not rise, for a beam that does not exist
 */
export async function countNuisance(
  sources: LogSources,
  site: Site,
  options: Pick<TradeOffOptions, 'thresholds' | 'delays' | 'beam' | keyof ReadOptions> = {},
): Promise<CountedNuisance> {
  const beams = new Map<string, BeamNuisance>();
  const axes = axesOf(options);
  const input = await readBeams(
    sources,
    { ...site, beams: chosenBeams(site, options) },
    (facts) => nuisanceTap(facts, site, axes, (found) => beams.set(facts.beam.id, found)),
    options,
  );
  return { ...axes, beams, input };
}

/**
 * Weighs threshold and delay with a nuisance that was counted before; its axes are used.
 *
 * @param counted from `countNuisance`; a beam that it does not hold is told without nuisance
 * @param site whose beams are weighed
 * @param options hall, places, fires
 * @throws UsageError for a scene that cannot be, for a beam that does not exist
 */
export function tradeOffCounted(
  counted: CountedNuisance,
  site: Site,
  options: Omit<TradeOffOptions, 'thresholds' | 'delays' | keyof ReadOptions>,
): TradeOffJson {
  const beams = chosenBeams(site, options);
  const { thresholds, delays } = counted;
  const fires = new Map(beams.map((beam) => [beam.id, curvesOf(beam, options)] as const));
  return weighed(beams, counted, { ...options, thresholds, delays }, fires);
}

function chosenBeams(site: Site, { beam }: Pick<TradeOffOptions, 'beam'>): Beam[] {
  const beams = site.beams.filter(({ id }) => beam === undefined || id === beam);
  if (beams.length === 0)
    throw new UsageError(`beam "${beam}" is not in the site: it has ${site.beams.map(({ id }) => id).join(', ')}`);
  return beams;
}

type BeamFires = ReturnType<typeof curvesOf>;

function weighed(
  beams: readonly Beam[],
  counted: CountedNuisance | null,
  options: TradeOffOptions,
  fires: ReadonlyMap<string, BeamFires>,
): TradeOffJson {
  return {
    format: 'beamkeep-tradeoff/1',
    beams: beams.map((beam) => {
      const found = counted?.beams.get(beam.id);
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
    input: counted?.input ?? null,
  };
}

const axesOf = ({
  thresholds = usualThresholds,
  delays = usualDelays,
}: Pick<TradeOffOptions, 'thresholds' | 'delays'>) => ({ thresholds, delays });

function curvesOf(beam: Beam, { hall, places, fires }: Pick<TradeOffOptions, 'hall' | 'places' | 'fires'>) {
  const below = placedBelowCeiling.value;
  const height = beam.height ?? hall.ceiling - below;
  return {
    curves: fires.map((each) => fireCurves({ ...beam, height }, hall, places, each)),
    assumed: beam.height === undefined ? [`height ${Number(height.toFixed(2))} m, ${below} m below the ceiling`] : [],
  };
}

const disturbing: ReadonlySet<Visit['work']> = new Set(['tested', 'cleaned', 'realigned', 'isolated']);

function nuisanceTap(
  { beam, intervalSeconds, assumed }: BeamFacts,
  { sampling, visits }: Site,
  alarms: { readonly thresholds: readonly number[]; readonly delays: readonly number[] },
  done: (found: BeamNuisance) => void,
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
