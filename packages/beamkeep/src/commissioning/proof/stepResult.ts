import type { DetectorState } from '../../response/index.js';
import type { Excursion } from './excursions.js';
import type { ExpectedStep } from './expected.js';

/** A line of the panel's own list, of one beam, its clock corrected. */
export interface PanelEvent {
  /** [ms since 1970-01-01 UTC] */
  readonly time: number;
  /** `fire`, `fault`, `reset`, or the panel's own word. */
  readonly what: string;
}

/** What a step must be judged by. */
export interface StepEvidence {
  readonly expected: ExpectedStep;
  /** The stay away from clean air that is this step, or that this step ended. */
  readonly excursion: Excursion | undefined;
  /** When the step began and when the next one did, as far as the signal shows it [ms]. */
  readonly from: number;
  readonly to: number;
  /** When a reset was told [ms]. */
  readonly resetAt: number | undefined;
  /** Obscuration once it was taken away, middle of the samples until the next step [%]. */
  readonly returned: number | undefined;
}

/** How one step came out. */
export interface StepResult {
  readonly expected: ExpectedStep;
  /** `not shown`: the log cannot say; a person must. */
  readonly verdict: 'pass' | 'fail' | 'not shown';
  /** Why, in sentences. */
  readonly reasons: readonly string[];
  /** When it began, and when the light came back [ms]; NaN where the signal does not show it. */
  readonly start: number;
  readonly end: number;
  /** What was held, as a share of what came before it [%]; NaN where nothing was. */
  readonly obscuration: number;
  /** From clean air to the fault threshold [s]; NaN where it was not reached. */
  readonly riseSeconds: number;
  /** When the threshold was reached, and when the signal came [ms]; NaN where they did not. */
  readonly since: number;
  readonly signalAt: number;
  /** Who says so: the panel's own list, or the received signal by the settings of the site file. */
  readonly shownBy: 'panel' | 'signal' | 'nobody';
  /** State at the end of the step, by the signal. */
  readonly state: DetectorState | undefined;
}
