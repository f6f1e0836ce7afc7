import { hour } from '../../columns/index.js';
import type { Picture } from '../picture.js';
import type { SlowStretch } from '../slowLoss.js';
import { logistic } from '../wording.js';

/**
 * Probability that a slow loss is the aim creeping away rather than dirt.
 *
 * Dirt leaves the sway in dB as it was and does not speed up; a creeping aim loses with the square of its angle, so it
 * speeds up and sways more as it goes. Growth of the sway proves loss of aim, no growth proves nothing. How much each sign
 * counts is own choice, tried on simulated logs.
 */
export function driftEvidence({ visits }: Picture, s: SlowStretch): number {
  let score = -2.5;
  // What a cleaning takes back was dirt; what a re-aiming takes back was aim.
  if (s.restored && s.restoredBy > 0.6 * s.gained) {
    const work = visits.find((v) => v.time <= s.end + 6 * hour && (v.until ?? v.time) >= s.end - 6 * hour)?.work;
    score += work === 'cleaned' ? -5 : work === 'realigned' ? 2 : -1.5;
  }
  score += 1.1 * Math.max(-3, Math.min(5, s.speedsUp));
  if (!Number.isNaN(s.swayGrowth)) {
    // Without the temperature, a season that turns hotter looks the same.
    const weight = s.swayByHeat ? 1 : 0.6;
    score += weight * (2.2 * Math.min(2.5, Math.log2(s.swayGrowth)) + 3 * Math.max(0, s.swayFollows - 0.2));
  }
  return logistic(score);
}
