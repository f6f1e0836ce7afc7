import type { CauseWord } from './causeWord.js';

/** A stretch as the truth file tells it: ISO instants of samples, UTC. */
export type Episode = readonly [string, string];

/** A cause that can be seen in the log. */
export interface LabelledCause {
  readonly cause: CauseWord;
  readonly start: string;
  readonly end: string;
  /** [% obscuration] unless `unit` says otherwise. */
  readonly magnitude: number;
  readonly unit: string;
  readonly episodes?: readonly Episode[];
  /** A cause that the data cannot tell from this one. */
  readonly accepts?: readonly CauseWord[];
  /** Loss gained in the stretch (contamination) [%]. */
  readonly gained?: number;
  readonly how?: 'cleaned' | 'realigned' | 'lines' | 'cells' | 'stuck';
  readonly accelerates?: boolean;
  readonly swayGrows?: boolean;
  readonly growthSeconds?: number;
  readonly hertz?: number;
}

/** A cause at work but too weak, too short or too rare to be asked for. */
export interface TraceOfCause {
  readonly cause: CauseWord;
  readonly magnitude: number | null;
  readonly unit: string;
  readonly why: string;
  /** So close to the rule that a finding is neither right nor wrong. */
  readonly near: boolean;
}

/** A stretch of dust or mist that grew past the alarm threshold as smoke may. */
export interface CouldBeSmoke {
  readonly cause: CauseWord;
  readonly start: string;
  readonly end: string;
  readonly magnitude: number;
}

/** The day on which dirt alone reaches the alarm threshold. */
export interface ForecastTruth {
  readonly obscuration: number;
  readonly date: string | null;
  readonly dateWithDailyLow?: string;
  readonly never?: boolean;
  readonly model: 'linear' | 'saturating' | 'bursts' | 'weekday';
}

/** Noise of a beam and the limits that follow from it [% of the clean-air span]. */
export interface NoiseFigures {
  readonly samplePercent: number;
  readonly hourlyPercent: number;
  readonly stepPercent: number;
  readonly slowLimitPercent: number;
  readonly fastLimitPercent: number;
}

/** What is true of one beam. */
export interface BeamTruth {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly causes: readonly LabelledCause[];
  readonly traces: readonly TraceOfCause[];
  readonly couldBeSmoke: readonly CouldBeSmoke[];
  readonly forecast: ForecastTruth | null;
  readonly noise: NoiseFigures;
  readonly aim?: {
    readonly offsetInHalfAngles: number;
    readonly movementInHalfAngles: number;
    readonly halfAngleDegrees: number;
    readonly alongOffset: number;
  };
  readonly gainControl?: boolean;
}

/** A truth file. */
export interface TruthFile {
  readonly format: 'beamkeep-truth/1';
  readonly invented: true;
  readonly log: string;
  readonly site: string;
  readonly kind: string;
  readonly samplingSeconds: number;
  readonly beams: readonly BeamTruth[];
}
