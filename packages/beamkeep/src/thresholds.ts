import { beamThresholds, type ThresholdsJson, type WallQuestion } from './commissioning/index.js';
import { beamNamed } from './log/index.js';
import type { Site } from './site/index.js';

/** Which beam, and what the table is to show. */
export interface ThresholdsQuestion extends WallQuestion {
  /** The beam's `id`; all beams when left out. */
  readonly beam?: string | undefined;
}

/**
 * What the thresholds of a site mean in every unit, against standards, at other separations, and under dirt.
 *
 * @throws UsageError for a beam that the site does not have, and for what is no threshold or separation
 * @example thresholds(site).beams[0]?.alarm.units['decibels-per-metre'] // 0.0151
 */
export function thresholds(site: Site, question: ThresholdsQuestion = {}): ThresholdsJson {
  const beams = question.beam === undefined ? site.beams : [beamNamed(site, question.beam)];
  return { format: 'beamkeep-thresholds/1', beams: beams.map((beam) => beamThresholds(beam, question)) };
}
