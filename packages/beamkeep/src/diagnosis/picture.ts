import type { Stretch } from '../columns/index.js';
import type { Visit } from '../site/index.js';
import type { Climb } from './climb.js';
import type { DailyShape } from './cycleKind.js';
import type { Excursion } from './excursions.js';
import type { Family } from './families.js';
import type { Heat } from './heat.js';
import type { HeldRun } from './held.js';
import type { LocalDay } from './localDays.js';
import type { Roughness } from './roughness.js';
import type { Parts } from './takeApart.js';
import type { View } from './view.js';

/**
 * What an excursion looks like. `block`: something in the path; `smoke`: cannot be told from smoke; `film`: mist; `dust`;
 * `light`; `load`: the structure under a load; `knock`: the aim changed at once, for good or until it was put right;
 * `rough`: noise; `slow`: other.
 */
export type Kind = 'block' | 'knock' | 'load' | 'smoke' | 'film' | 'dust' | 'light' | 'rough' | 'slow';

/** All that is measured of a beam, once, for the causes to read. */
export interface Picture {
  readonly view: View;
  readonly parts: Parts;
  /** Stretches in which the reading is stuck. */
  readonly held: readonly HeldRun[];
  /** Depth of each row below slow course and cycle, share of clean air. */
  readonly depth: Float64Array;
  readonly days: readonly LocalDay[];
  /** The movement read from the structure's temperature, where that is logged. */
  readonly heat: Heat | undefined;
  readonly shape: DailyShape;
  readonly excursions: readonly Excursion[];
  readonly family: ReadonlyMap<Excursion, Family>;
  readonly kind: ReadonlyMap<Excursion, Kind>;
  readonly climbs: readonly Climb[];
  /** Climbs that end well above the loss of the day before; any other ends a spell of more light. */
  readonly leavingClimbs: ReadonlySet<Climb>;
  /** These, and growths that end as far above it but fall short of a climb or are not held. */
  readonly growths: readonly Climb[];
  /** Of those, the ones with several of their like on other days. */
  readonly usualClimbs: ReadonlySet<Climb>;
  readonly rough: Roughness;
  /** How much larger the noise is on each row than usual. */
  readonly raised: Float32Array;
  /** Stretches in which the obscuration stood past the alarm threshold long enough to be a fire signal. */
  readonly fires: readonly Stretch[];
  /** Visits that concern the beam. */
  readonly visits: readonly Visit[];
  /** Least change of level that counts for slow causes, share of clean air. */
  readonly slowLimit: number;
}

/** What is measured before the excursions are sorted. */
export type Unsorted = Omit<Picture, 'kind'>;
