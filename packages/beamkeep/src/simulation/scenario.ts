import type { Layout, SignalUnit, Work } from '../site/index.js';
import type { WorkCalendar } from './calendar.js';
import type { Aerosol } from './effects/aerosol.js';
import type { Block } from './effects/block.js';
import type { Creep } from './effects/creep.js';
import type { Dirt } from './effects/dirt.js';
import type { ElectricalNoise } from './effects/electricalNoise.js';
import type { Film } from './effects/film.js';
import type { GainStep } from './effects/gainStep.js';
import type { Gap } from './effects/gap.js';
import type { Knock } from './effects/knock.js';
import type { Lamp } from './effects/lamp.js';
import type { LoadMovement } from './effects/loadMovement.js';
import type { Measured } from './effects/measured.js';
import type { Movement } from './effects/movement.js';
import type { Smoke } from './effects/smoke.js';
import type { Sunlight } from './effects/sunlight.js';
import type { Vibration } from './effects/vibration.js';
import type { Electronics } from './electronics.js';
import type { Lobe } from './lobe.js';
import type { Recording } from './recording/recording.js';
import type { Climate } from './weather.js';

/** Something that happens to a beam. */
export type Effect =
  | Dirt
  | Knock
  | Creep
  | Movement
  | LoadMovement
  | Block
  | Film
  | Aerosol
  | Sunlight
  | Lamp
  | Vibration
  | ElectricalNoise
  | Gap
  | GainStep
  | Smoke
  | Measured;

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

/** A channel beside the beams. */
export interface SideChannel {
  readonly column: string;
  /** Smallest step that is logged. */
  readonly step: number;
}

/** Work at the site, as the site file tells it: not always at the right minute. */
export interface VisitPlan {
  readonly time: number;
  readonly until?: number;
  readonly beam?: string;
  readonly work: Work;
}

/** Everything about one log except chance: with a seed it gives the same log, byte for byte. */
export interface Scenario {
  readonly name: string;
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
  readonly visits: readonly VisitPlan[];
  readonly beams: readonly BeamPlan[];
  /** Keys of the site file's head that are left out (`timeZone`, `latitude`, `longitude`). */
  readonly untold: readonly string[];
}
