/*
 * The site as the rest of the library sees it: every default filled in, every default that bears on safety named
 * under `assumed`. The keys and their meanings are those of the site file.
 */

/** `reflective`: light crosses the smoke twice; `end-to-end`: once. */
export const layouts = ['reflective', 'end-to-end'] as const;
/** One of `layouts`. */
export type Layout = (typeof layouts)[number];

/** Unit of a beam's column in the log. `counts` and `millivolts` are proportional to received optical power. */
export const signalUnits = ['percent', 'obscuration', 'counts', 'millivolts', 'decibels'] as const;
/** One of `signalUnits`. */
export type SignalUnit = (typeof signalUnits)[number];

/** The equipment's own slow gain: none, not known, or known to end at so many decibels. */
export type Compensation = 'none' | 'unknown' | { readonly limitDecibels: number };

/** How time stands in a log. */
export const timeFormats = ['iso', 'unix-seconds', 'unix-milliseconds', 'day-first', 'month-first'] as const;
/** One of `timeFormats`. */
export type TimeFormat = (typeof timeFormats)[number];

/** `mean`: a value stands for the interval before its time; `on-change`: a value holds until the next line. */
export const samplings = ['regular', 'mean', 'on-change'] as const;
/** One of `samplings`. */
export type Sampling = (typeof samplings)[number];

/** What was done at a visit. */
export const works = ['cleaned', 'realigned', 'tested', 'reset', 'isolated', 'renormalised'] as const;
/** One of `works`. */
export type Work = (typeof works)[number];

/** One beam of a site, defaults filled in. */
export interface Beam {
  readonly id: string;
  readonly layout: Layout;
  /** Distance between the two ends [m]. */
  readonly separation: number;
  /** Height above the floor [m]. */
  readonly height?: number;
  /** Direction in which the receiver looks, clockwise from north [degrees]. */
  readonly bearing?: number;
  /** Direction in which the receiver looks, above the horizontal [degrees]. */
  readonly tilt?: number;
  /** Of the light [nm]. */
  readonly wavelength: number;
  /** Turn of the head at which the received level halves [degrees]. */
  readonly halfAngle?: number;
  /** The beam's column in the log; the only column beside time when left out. */
  readonly signalColumn?: string;
  readonly signalUnit: SignalUnit;
  /** Reading in clean air [signalUnit]; left out: from the log's first good stretch. */
  readonly cleanAir?: number;
  /** Reading with the far end fully covered [signalUnit]; left out: nothing comes back. */
  readonly covered?: number;
  /** Whether the equipment takes the covered reading off before it compares with its thresholds. */
  readonly coveredSubtracted: boolean;
  readonly compensation: Compensation;
  /** Obscuration that means smoke [%]. */
  readonly alarmThreshold: number;
  /** Obscuration treated as a blocked beam [%]. */
  readonly faultThreshold: number;
  /** How long a condition must hold [s]. */
  readonly alarmDelay: number;
  /** How long a condition must hold [s]. */
  readonly faultDelay: number;
  /** An alarm stays until reset. */
  readonly latching: boolean;
  /** How far the obscuration must fall below its threshold before an unlatched alarm, or a fault, is over [%]. */
  readonly hysteresis: number;
  readonly temperatureColumn?: string;
  readonly humidityColumn?: string;
  readonly gainColumn?: string;
  readonly plantColumn?: string;
  /** Defaults in use that bear on safety, in words ("alarmThreshold 35 %"). */
  readonly assumed: readonly string[];
}

/** Work done at the site. */
export interface Visit {
  /** [ms since 1970-01-01 UTC] */
  readonly time: number;
  /** End of the work [ms]; left out: an instant. */
  readonly until?: number;
  /** Beam concerned; left out: all. */
  readonly beam?: string;
  readonly work: Work;
}

/** A site file with its defaults filled in. */
export interface Site {
  readonly name: string;
  /** IANA zone. */
  readonly timeZone: string;
  /** [degrees, north positive] */
  readonly latitude?: number;
  /** [degrees, east positive] */
  readonly longitude?: number;
  readonly beams: readonly Beam[];
  readonly visits: readonly Visit[];
  /** Name of the time column, or two names (date, time) to be joined; left out: the first column. */
  readonly timeColumn?: string | readonly [string, string];
  readonly timeFormat?: TimeFormat;
  readonly sampling: Sampling;
}
