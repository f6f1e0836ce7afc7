import type { Layout, SignalUnit, Work } from '../site/index.js';
import type { Effect } from './effects/effect.js';
import type { Electronics } from './electronics.js';
import type { Lobe } from './lobe.js';
import type { Surroundings } from './surroundings.js';

/** The equipment's own slow gain. */
export interface GainControl {
  /** How long it takes to make up most of a loss [h]. */
  readonly hours: number;
  /** Most that it makes up [dB]. */
  readonly limitDecibels: number;
  /** Column in which the gain is logged; left out: not logged. */
  readonly column?: string;
}

/** One beam: how it is built, how it is read, and what happens to it. */
export interface BeamPlan {
  readonly id: string;
  readonly layout: Layout;
  /** Distance between the two ends [m]. */
  readonly separation: number;
  /** Above the floor [m]. */
  readonly height: number;
  /** Direction in which the receiver looks, clockwise from north [degrees]. */
  readonly bearing: number;
  /** Direction in which the receiver looks, above the horizontal [degrees]. */
  readonly tilt: number;
  /** Turn at which the received level halves [degrees]. */
  readonly halfAngle: number;
  readonly lobe: Lobe;
  /** Where the head pointed at commissioning, off its peak: sideways and upwards [half-angles]. */
  readonly offset: readonly [number, number];
  readonly column: string;
  readonly unit: SignalUnit;
  /** Reading in clean air [unit]. */
  readonly cleanAir: number;
  /** What still arrives with the far end covered, as a share of clean air. */
  readonly covered: number;
  /** Highest share of clean air that the receiver can show. */
  readonly ceiling: number;
  /** Smallest step of the reading [unit]. */
  readonly step: number;
  readonly electronics: Electronics;
  readonly gainControl?: GainControl;
  readonly alarmThreshold: number;
  readonly faultThreshold: number;
  readonly alarmDelay: number;
  readonly faultDelay: number;
  readonly effects: readonly Effect[];
  /** Keys of the site file that this beam's entry leaves out. */
  readonly untold: readonly string[];
}

/** Work at the site, as the site file tells it: not always at the right minute. */
export interface VisitPlan {
  readonly time: number;
  readonly until?: number;
  readonly beam?: string;
  readonly work: Work;
}

/** Everything about one log except chance: with a seed it gives the same log, byte for byte. */
export interface Scenario extends Surroundings {
  readonly name: string;
  readonly visits: readonly VisitPlan[];
  readonly beams: readonly BeamPlan[];
  /** Keys of the site file's head that are left out (`timeZone`, `latitude`, `longitude`). */
  readonly untold: readonly string[];
}
