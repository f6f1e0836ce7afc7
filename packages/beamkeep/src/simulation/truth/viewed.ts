import { rowAt } from '../../columns/index.js';
import type { BeamLight } from '../beamLight.js';
import type { EffectPart } from '../effects/effect.js';
import type { BeamPlan } from '../scenario.js';
import type { Scene } from '../scene.js';
import type { CauseWord } from './causeWord.js';
import type { NoiseFigures } from './truthFile.js';

/** One beam as its log shows it: what labelling needs. */
export interface Viewed {
  readonly scene: Scene;
  readonly beam: BeamPlan;
  readonly light: BeamLight;
  /** 1 where the log holds a usable value of this beam. */
  readonly seen: Uint8Array;
  readonly noise: NoiseFigures;
  /** Slow and fast limit [share of clean air]. */
  readonly slow: number;
  readonly fast: number;
}

/** Parts of one cause. */
export const partsOf = ({ light }: Viewed, cause: CauseWord): EffectPart[] =>
  light.parts.filter((part) => part.cause === cause && !part.gain);

/** First seen row at or after an instant; the number of rows when there is none. */
export function seenFrom({ scene: { time }, seen }: Viewed, instant: number): number {
  let i = rowAt(time, instant);
  while (i < time.length && seen[i] === 0) i++;
  return i;
}

/** Last seen row at or before an instant; -1 when there is none. */
export function seenUpTo({ scene: { time }, seen }: Viewed, instant: number): number {
  let i = Math.min(rowAt(time, instant + 1), time.length) - 1;
  while (i >= 0 && seen[i] === 0) i--;
  return i;
}

/** An instant as the truth file writes it. */
export const iso = (instant: number): string => new Date(instant).toISOString();

/** A row's instant as the truth file writes it. */
export const isoAt = ({ scene: { time } }: Viewed, row: number): string => iso(time[row] as number);

/** Three significant digits. */
export const brief = (value: number): number => Number(value.toPrecision(3));
