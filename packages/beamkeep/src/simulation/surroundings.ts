import type { WorkCalendar } from './calendar.js';
import type { Recording } from './recording/recording.js';
import type { Climate } from './weather.js';

/** A channel beside the beams. */
export interface SideChannel {
  readonly column: string;
  /** Smallest step that is logged. */
  readonly step: number;
}

/** What all beams of a log live in: place, weather, people, logger. */
export interface Surroundings {
  readonly kind: 'single' | 'mixed' | 'healthy' | 'truncated';
  /** IANA zone in which the people work. */
  readonly timeZone: string;
  readonly latitude: number;
  readonly longitude: number;
  readonly climate: Climate;
  readonly calendar: WorkCalendar;
  /** Instant of the first sample [ms]. */
  readonly start: number;
  readonly samples: number;
  /** [s] */
  readonly intervalSeconds: number;
  /** How much warmer sunshine makes the structure [K per W/m2]. */
  readonly solarGain: number;
  /** Lag of the thermometer at the structure behind the roof's skin [h]. */
  readonly thermometerLag: number;
  readonly temperature?: SideChannel;
  readonly humidity?: SideChannel;
  /** Whether plant runs, 0 or 1: follows the shifts. */
  readonly plant?: SideChannel;
  readonly recording: Recording;
}
