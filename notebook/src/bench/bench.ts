import { type DiagnosisJson, diagnose, parseSite, respond, UsageError } from 'beamkeep';
import { type BeamRecord, type Channel, rowAt, type Trace } from 'beamkeep/columns';
import {
  type BeamDiagnosis,
  type BeamStanding,
  beamStanding,
  diagnoseBeams,
  type StandingDays,
} from 'beamkeep/diagnosis';
import { type ExplanationJson, explanationOf, panelEntries, secondCause } from 'beamkeep/moments';
import { type CountedNuisance, countNuisance, type TradeOffJson, triedSettings } from 'beamkeep/planning';
import type { Site } from 'beamkeep/site';
import { expose, transfer } from 'comlink';
import type { Scale } from '../sheet/sheet.js';
import { type DailyLevels, dailyLevels } from './dailyLevels.js';
import { type DayFold, dayFold } from './dayFold.js';
import { inQuiet, quick } from './inQuiet.js';
import { gapIntervals, outline } from './outline.js';
import { packedLog } from './packedRecords.js';
import { questions } from './questions.js';
import { canBeRefined, type RawFile, rawFile } from './rawSamples.js';
import type { BeamSignalled, Line, LogFile, Progress, Reading, SmallFile, TableRow, Window } from './reading.js';
import { readingOf } from './readingOf.js';
import { reducedLog } from './reducedLog.js';
import { scaled } from './scaled.js';
import { signalled } from './signalled.js';
import { signalledInTrace } from './signalledInTrace.js';
import { type SiteZone, siteZone } from './siteZone.js';
import { explained, reducedOf, sizeOf, sourcesOf } from './sources.js';
import { type SwingSpectrum, spectrumOf } from './spectrumOf.js';
import { teller } from './teller.js';
import { type TradeOffHall, tradeOffOf } from './tradeOffOf.js';
import { windowTable } from './windowTable.js';
import { plainFile } from './workbook.js';

/*
 * The bench: everything that takes time is done here, in a worker of its own for each log cell. The page asks for what it
 * draws and gets no more than it can draw; lines go before what takes longer. To stop a reading the page ends the worker:
 * nothing goes on unseen.
 */

/** Rows a day of the folded view: ten minutes each. */
const foldRows = 144;

interface Held {
  readonly site: Site;
  readonly zone: SiteZone;
  readonly records: ReadonlyMap<string, BeamRecord>;
  readonly diagnosis: DiagnosisJson;
  readonly files: readonly LogFile[];
  /** Whether these are condensed records, not the samples. */
  readonly reduced: boolean;
  /** For looking closer than the traces do; undefined where that cannot be. */
  readonly raw: RawFile | undefined;
  /** What was measured of the beams, once a comparison asks for it. */
  measured?: readonly BeamDiagnosis[] | undefined;
  /** The counting of what the settings would have signalled, once it is asked for. */
  counting?: Counting | undefined;
}

/** A pass over the log that counts alarms. */
interface Counting {
  readonly found: Promise<CountedNuisance>;
  /** Set by whoever wants it no more. */
  readonly signal: { aborted: boolean };
  /** Whoever asked last is told how far it has come. */
  tell: (progress: Progress) => void;
}

let held: Held | undefined;

/** What was read. */
function open(): Held {
  if (!held) throw new Error('nothing was read yet');
  return held;
}

function record(beam: string): BeamRecord {
  const found = open().records.get(beam);
  if (!found) throw new Error(`no beam "${beam}" was read`);
  return found;
}

/** A quantity logged beside the beam, as a trace: so the same outline serves. */
function traceOf({ time, value }: Channel): Trace {
  const flat = Float32Array.from(value);
  return {
    time,
    until: time,
    level: value,
    low: flat,
    high: flat,
    spread: new Float32Array(time.length),
    count: new Uint32Array(time.length).fill(1),
  };
}

/** Most samples that are read again to look closer. */
const closestSamples = 400_000;

/** The samples of a window themselves where the trace has condensed them and they can be had; else null. */
async function closest({ id, trace, intervalSeconds }: BeamRecord, window: Window): Promise<Trace | null> {
  const samples = (window.to - window.from) / (intervalSeconds * 1000);
  if (!held?.raw || !(samples <= closestSamples) || !isCondensed(trace, window)) return null;
  return (await held.raw.samples(window))?.get(id) ?? null;
}

/** Whether a window of a trace holds rows of several samples. */
function isCondensed(trace: Trace, { from, to }: Window): boolean {
  const last = rowAt(trace.time, to);
  for (let row = rowAt(trace.time, from); row < last; row++) if ((trace.count[row] as number) > 1) return true;
  return false;
}

/** A single file that is not zipped can be looked into. */
async function rawOf(files: readonly LogFile[], site: Site): Promise<RawFile | undefined> {
  const [file, another] = files;
  if (!file || another || !canBeRefined(site)) return undefined;
  const start = new Uint8Array(await file.blob.slice(0, 2).arrayBuffer());
  return start[0] === 0x1f && start[1] === 0x8b ? undefined : rawFile(file, site);
}

const gapOf = ({ intervalSeconds }: BeamRecord): number =>
  held?.site.sampling === 'on-change' ? Number.POSITIVE_INFINITY : gapIntervals * intervalSeconds * 1000;

function lineOf(
  trace: Trace,
  { from, to }: Window,
  buckets: number,
  gap: number,
  value: (level: number) => number,
): Line {
  const { time, level } = outline(trace, from, to, buckets, gap);
  const clock = Array.from(time, open().zone.wall);
  const drawn = level.map(value);
  return transfer({ time, clock, value: drawn }, [time.buffer, drawn.buffer]);
}

const bench = {
  ...questions,

  /**
   * Reads and diagnoses a log.
   *
   * @param given the files of the log, plain, gzipped or workbooks
   * @param siteFile the site file
   * @param events the panel's list of what it signalled
   * @param tell told how far it has come
   * @throws UsageError when the log, the site or the list cannot be used
   */
  async read(
    given: readonly LogFile[],
    siteFile: SmallFile,
    events: SmallFile | null,
    tell: (progress: Progress) => void,
  ): Promise<Reading> {
    held = undefined;
    const began = performance.now();
    const site = parseSite(siteFile.text, siteFile.name);
    const files = await Promise.all(given.map(plainFile));
    const total = sizeOf(files);
    const reduced = await reducedOf(files);
    const asked = { explain: secondCause, events: events ? panelEntries(events.text, events.name, site) : undefined };
    const { diagnosis, records } = reduced
      ? await explained(reduced, site, asked)
      : await diagnose(sourcesOf(files), site, { ...asked, onProgress: teller(total, tell) });
    held = {
      files,
      reduced: reduced !== undefined,
      raw: reduced ? undefined : await rawOf(files, site),
      site,
      zone: siteZone(site.timeZone),
      records: new Map(records.map((one) => [one.id, one])),
      diagnosis,
    };
    return readingOf({
      names: files.map(({ name }) => name),
      bytes: total,
      site,
      diagnosis,
      records,
      seconds: (performance.now() - began) / 1000,
      reduced: reduced !== undefined,
    });
  },

  /**
   * What the equipment would have signalled: the log is read once more, sample by sample; of a reduced log row by row. A reset in the panel's list
   * ends a held fire signal, as a visit of the site file does.
   */
  async response(): Promise<BeamSignalled[]> {
    const { files, reduced, site, records, diagnosis } = open();
    const resets = (diagnosis.events ?? [])
      .filter(({ what }) => what.toLowerCase() === 'reset')
      .map(({ at, beam }) => ({ time: Date.parse(at), work: 'reset' as const, ...(beam === null ? {} : { beam }) }));
    const visits = [...site.visits, ...resets];
    if (reduced)
      return site.beams.flatMap((beam) => signalledInTrace(beam, records.get(beam.id), visits, site.sampling));
    const { beams } = await respond(sourcesOf(files), { ...site, visits });
    return beams.map((beam) => signalled(beam, records.get(beam.id)?.trace.until.at(-1) ?? Number.NaN));
  },

  /**
   * How often every threshold and delay would have alarmed: the log is read once more, sample by sample, unless that was
   * done before.
   *
   * @param tell told how far it has come
   * @throws when it is stopped
   */
  nuisance(tell: (progress: Progress) => void): Promise<CountedNuisance> {
    const log = open();
    if (log.counting) {
      log.counting.tell = tell;
      return log.counting.found;
    }
    const { files, reduced, site } = log;
    if (reduced)
      return Promise.reject(
        new UsageError('that takes every sample, and this sheet holds its log reduced: drop the whole log on its cell'),
      );
    const signal = { aborted: false };
    const onProgress = teller(sizeOf(files), (progress) => counting.tell(progress));
    const found = countNuisance(sourcesOf(files), site, { ...triedSettings(site), onProgress, signal }).catch(
      (error) => {
        log.counting = undefined;
        throw error;
      },
    );
    const counting: Counting = { found, signal, tell };
    log.counting = counting;
    return found;
  },

  /** Stops the counting of alarms. */
  stopNuisance(): void {
    if (held?.counting) held.counting.signal.aborted = true;
  },

  /** The log as it is reckoned with, condensed, as a table. */
  reducedLog(): Blob {
    return new Blob([...reducedLog(open().records.values())], { type: 'text/csv' });
  },

  /** The same for a sheet file, from which it can be opened again. */
  packedLog(): Blob | Promise<Blob> {
    const { files, reduced, records, diagnosis, site } = open();
    const [file] = files;
    if (reduced && file) return file.blob;
    return packedLog({ records: [...records.values()], input: diagnosis.input }, site);
  },

  /** How every beam stands at the end or the begin of this log. */
  standings(days: StandingDays): Promise<BeamStanding[]> {
    return inQuiet(() => {
      const log = open();
      log.measured ??= diagnoseBeams([...log.records.values()], log.site);
      return log.measured.map((beam) => beamStanding(beam, days));
    });
  },

  /** Both costs of every setting of a beam, for a nuisance that was counted before. */
  tradeOff(counted: CountedNuisance, site: Site, beam: string, hall: TradeOffHall): TradeOffJson {
    return tradeOffOf(counted, site, beam, hall);
  },

  /**
   * Why then? What the signal did at a time, what recurs at that hour, what it is and what comes second.
   *
   * @param at an instant or a time of day in words, "Tue 06:40"
   * @param beam a beam, or null for all
   * @throws UsageError when the time is none, or lies outside the log
   */
  explain(at: string, beam: string | null): Promise<ExplanationJson> {
    return inQuiet(() => {
      const { records, site, diagnosis } = open();
      return explanationOf([...records.values()], site, diagnosis.input, { at, ...(beam === null ? {} : { beam }) });
    });
  },

  /** The line of a beam within a window, on a scale. */
  level(beam: string, window: Window, buckets: number, scale: Scale): Line {
    quick();
    return lineOf(record(beam).trace, window, buckets, gapOf(record(beam)), (level) => scaled(level, scale));
  },

  /** The same line from the samples themselves, where the trace has condensed them and they can be had; else null. */
  async closer(beam: string, window: Window, buckets: number, scale: Scale): Promise<Line | null> {
    quick();
    const samples = await closest(record(beam), window);
    return samples && lineOf(samples, window, buckets, gapOf(record(beam)), (level) => scaled(level, scale));
  },

  /** The line of the temperature near a beam's structure within a window [degC]. */
  temperature(beam: string, window: Window, buckets: number): Line {
    quick();
    const { temperature } = record(beam);
    if (!temperature) throw new Error(`no temperature was read for beam "${beam}"`);
    return lineOf(traceOf(temperature), window, buckets, gapOf(record(beam)), (value) => value);
  },

  /** A window of a beam as a table. */
  table(beam: string, window: Window, rows: number): TableRow[] {
    quick();
    return windowTable(record(beam).trace, window, rows);
  },

  /** A beam folded at midnight. */
  dayFold(beam: string): Promise<DayFold> {
    return inQuiet(() => {
      const fold = dayFold(record(beam).trace, open().zone, foldRows);
      return transfer(fold, [fold.level.buffer]);
    });
  },

  /** Which periods return on a beam within a window. */
  spectrum(beam: string, window: Window): Promise<SwingSpectrum> {
    return inQuiet(() => {
      const { trace, intervalSeconds } = record(beam);
      return spectrumOf(trace, window, intervalSeconds * 1000);
    });
  },

  /** A beam day by day, some stretches left out. */
  dailyLevels(beam: string, leftOut: readonly (readonly [number, number])[]): Promise<DailyLevels> {
    return inQuiet(() => {
      const days = dailyLevels(record(beam).trace, open().zone, leftOut);
      return transfer(days, [days.middle.buffer, days.low.buffer]);
    });
  },
};

/** What the page sees of the bench. */
export type Bench = typeof bench;

expose(bench);
