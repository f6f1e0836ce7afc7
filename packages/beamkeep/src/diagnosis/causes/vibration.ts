import type { Cause } from '../cause.js';
import { spells } from '../spells.js';
import { evidence, logistic, percent } from '../wording.js';
import { shakingOrNoise } from './roughStretches.js';

/** The mount shakes: a steady swing between two ends, without spikes. */
export const vibration: Cause = {
  word: 'vibration',
  meaning: 'the mount shakes',
  shows: 'a narrow spectral line, or its alias, while plant runs',
  otherBeams: 'show it too',
  action: 'Find the plant that runs at these hours; stiffen the mount or part it from what shakes.',
  settles: 'A hand on the mount while the plant runs; sampling at 20 Hz or more shows the line itself.',
  claims: (picture) => {
    const own = shakingOrNoise(picture).shaking;
    if (own.length === 0) return [];
    const swing = Math.max(...own.map((r) => r.swing));
    const shaken = Math.max(...own.map((r) => r.shaken));
    return spells(own.map((r) => [r.start, r.end] as const)).map((s) => ({
      start: s.start,
      end: s.end,
      episodes: s.episodes,
      confidence: Math.min(0.95, Math.max(logistic(9 * (swing - 0.38)), shaken)),
      severity: 'note' as const,
      summary: `The level swings by ${percent(Math.max(...own.map((r) => r.spread)))} % between two ends, without spikes, as a mount that shakes.`,
      evidence: [
        evidence('spread over the usual', Math.max(...own.map((r) => r.times)), 'times'),
        evidence('steadiness of the swing, 0 to 1', swing, ''),
        evidence('likeness to the spread of a swing, 0 to 1', shaken, ''),
        evidence('greatest deviation over the spread', Math.max(...own.map((r) => r.crest)), ''),
        evidence('fastest shaking that the sampling can show', 500 / picture.view.interval, 'Hz'),
      ],
    }));
  },
};
