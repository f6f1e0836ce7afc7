import type { EventTold, Line, Signalled, Window } from '../bench/reading.js';
import type { SiteZone } from '../bench/siteZone.js';
import type { Scale } from '../sheet/sheet.js';
import type { Strip } from './strips.js';

/** What a lane shows. */
export interface Lane {
  readonly line: Line;
  readonly scale: Scale;
  readonly reach: 'thresholds' | 'data';
  readonly alarmThreshold: number;
  readonly faultThreshold: number;
  readonly strips: readonly Strip[];
  /** Rows of bars: those of the strips, and one more where there is something that was signalled. */
  readonly rows: number;
  readonly chosen: number | null;
  /** What the equipment would have signalled: a row of its own under the findings; null where it is not shown. */
  readonly signalled: readonly Signalled[] | null;
  /** Entries of the panel's list that concern this beam. */
  readonly events: readonly EventTold[];
  readonly window: Window;
  readonly zone: SiteZone;
  /** Whether the time labels stand under this lane. */
  readonly lowest: boolean;
  /** Whether a value holds until the next one. */
  readonly steps: boolean;
}
