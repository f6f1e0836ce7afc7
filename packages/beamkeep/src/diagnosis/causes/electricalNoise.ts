import type { Cause } from '../cause.js';
import { spells } from '../spells.js';
import { evidence, logistic, percent } from '../wording.js';
import { shakingOrNoise } from './roughStretches.js';

/** Supply or wiring interference: the spread grows with no change of level, spikes of both signs. */
export const electricalNoise: Cause = {
  word: 'electrical-noise',
  meaning: 'supply or wiring interference',
  shows: 'spread of the samples grows with no change of level; spikes of both signs',
  action: 'Check supply, earthing, screening and joints; find what is switched at these times.',
  settles: 'Feed the beam from a battery or another supply for a day: if it is quiet, the supply is the cause.',
  claims: (picture) => {
    const own = shakingOrNoise(picture).noise;
    if (own.length === 0) return [];
    const times = Math.max(...own.map((r) => r.times));
    return spells(own.map((r) => [r.start, r.end] as const)).map((s) => ({
      start: s.start,
      end: s.end,
      episodes: s.episodes,
      confidence: Math.min(0.95, logistic(1.5 * (times - 2.7))),
      severity: 'note' as const,
      summary: `The samples spread ${times.toFixed(1)} times as much as usual, with no change of level.`,
      evidence: [
        evidence('spread over the usual', times, 'times'),
        evidence('spread', percent(Math.max(...own.map((r) => r.spread))), '%'),
        evidence('greatest deviation over the spread', Math.max(...own.map((r) => r.crest)), ''),
      ],
    }));
  },
};
