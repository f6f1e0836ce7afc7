import type { RunnerUpJson } from 'beamkeep';
import type { CauseWord, Finding } from 'beamkeep/diagnosis';
import type { DetectorState } from 'beamkeep/response';
import type { Site } from 'beamkeep/site';

/*
 * What passes between the page and the bench (the worker that reads and computes). Plain data only; times are
 * instants [ms since 1970 UTC]; levels are shares of clean air.
 */

/** A file as the page holds it. */
export interface LogFile {
  readonly name: string;
  readonly blob: Blob;
}

/** A small file as text, with its name for messages. */
export interface SmallFile {
  readonly name: string;
  readonly text: string;
}

/** How far the reading has come. */
export interface Progress {
  /** Bytes read of `total`, as the files stand (packed, when they are). */
  readonly done: number;
  readonly total: number;
}

/** A finding with its number in the sheet: the same number stands in the plots and in the list. */
export interface NumberedFinding extends Finding {
  readonly number: number;
  readonly beam: string;
  /** What comes second, and how to part the two on site. */
  readonly runnerUp?: RunnerUpJson;
}

/** When the margin is gone, as the diagnosis tells it. */
export interface Forecast {
  /** The margin that ends it [%]. */
  readonly obscuration: number;
  readonly ends: 'alarm' | 'compensation-limit';
  /** Dates at the site. */
  readonly median: string;
  readonly low: string;
  /** Null when the end is open. */
  readonly high: string | null;
}

/** An entry of the panel's list, joined to what the log shows then. */
export interface EventTold {
  /** On the log's clock [ms]. */
  readonly at: number;
  /** Beam of the entry; null for all. */
  readonly beam: string | null;
  readonly what: string;
  /** State that the settings give; null where the log holds no sample. */
  readonly state: DetectorState | null;
  /** The finding at that time. */
  readonly finding: { readonly number: number; readonly cause: CauseWord } | null;
  readonly words: string;
}

/** What was read of one beam; instants and levels are NaN where the log holds no sample of it. */
export interface BeamReading {
  readonly id: string;
  readonly from: number;
  readonly to: number;
  /** Usable values. */
  readonly samples: number;
  readonly intervalSeconds: number;
  /** Extremes of the level. */
  readonly low: number;
  readonly high: number;
  readonly hasTemperature: boolean;
  readonly findings: readonly NumberedFinding[];
  readonly forecast: Forecast | null;
  /** Defaults in use that bear on safety. */
  readonly assumed: readonly string[];
}

/** What was mended or dropped while reading. */
export interface InputTold {
  readonly lines: number;
  readonly dropped: number;
  readonly notes: readonly {
    readonly line: number;
    readonly lines: number;
    readonly what: string;
    readonly file?: string;
  }[];
}

/** What a log holds, explained. */
export interface Reading {
  readonly names: readonly string[];
  readonly bytes: number;
  readonly site: Site;
  readonly beams: readonly BeamReading[];
  readonly input: InputTold;
  /** The panel's list, joined to the log; empty where none was given. */
  readonly events: readonly EventTold[];
  /** How the panel's clock stands to the log's, in words; null without a list. */
  readonly clock: string | null;
  /** The first and the last sample of all beams. */
  readonly from: number;
  readonly to: number;
  /** How long it took [s]. */
  readonly seconds: number;
  /** Where the log was opened reduced: of how many samples, all beams, so many stand as they were; else null. */
  readonly reduced: { readonly samples: number; readonly kept: number } | null;
  /** The whole diagnosis as the JSON format has it, for saving. */
  readonly json: string;
}

/** A stretch in which the equipment would have signalled something. */
export interface Signalled {
  readonly state: 'fire' | 'fault';
  readonly start: number;
  readonly end: number;
}

/** What the equipment of one beam would have signalled, and what must be known of that answer. */
export interface BeamSignalled {
  readonly id: string;
  readonly stretches: readonly Signalled[];
  readonly notes: readonly string[];
}

/** A window of time. */
export interface Window {
  readonly from: number;
  readonly to: number;
}

/** A line ready to be drawn: instants, the site's clock and what stands at each, NaN where the line breaks. */
export interface Line {
  readonly time: Float64Array;
  readonly clock: readonly string[];
  readonly value: Float64Array;
}

/** Rows of a table of a window: least, middle and greatest level of each stretch; NaN without samples. */
export interface TableRow {
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}
