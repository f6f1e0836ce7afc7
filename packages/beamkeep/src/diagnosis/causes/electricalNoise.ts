import { rollingMedian } from '../../statistics/index.js';
import type { Cause } from '../cause.js';
import type { Picture } from '../picture.js';
import { spells } from '../spells.js';
import { swayAt } from '../swayAt.js';
import { evidence, logistic, percent } from '../wording.js';
import { type RoughStretch, shakingOrNoise } from './roughStretches.js';
import { isSunlit } from './sunlit.js';

/**
 * What moves in the heat moves in the wind, too: share of the daily swing within which samples may spread for that, and how
 * many times the usual more they must spread there, to be noise as often as not. Own choice.
 */
const windOfSway = 0.25;
const windTimes = 3;

/** How many times the usual a rough stretch spreads, over what wind on a moving beam may explain. */
const overWind = (picture: Picture, r: RoughStretch): number =>
  r.times - (r.spread < windOfSway * swayAt(picture, r) ? windTimes : 0);

/**
 * Rows of the median that takes noise and spikes off, and share of the steps from row to row that it must not leave: of
 * independent samples it leaves a quarter, of a course that wanders half or more. Own choice, measured on simulated noise.
 */
const courseRows = 5;
const courseLeaves = 0.38;

/** Whether a rough stretch follows a course of its own, as a structure that creeps does. */
function wanders({ view: { trace } }: Picture, { from, to }: RoughStretch): boolean {
  const own = trace.level.slice(from, to + 1);
  return stepSize(rollingMedian(own, courseRows)) > courseLeaves * stepSize(own);
}

/** Sum of the steps from row to row, whatever their sign. */
function stepSize(of: Float64Array): number {
  let sum = 0;
  for (let i = 1; i < of.length; i++) sum += Math.abs((of[i] as number) - (of[i - 1] as number));
  return sum;
}

/**
 * Spreads that a step from row to row must pass to be a slip, share of it that the steps beside it stay under, and share of
 * such steps from which a structure sticks and slips. Own choice: simulated noise has up to 0.14, a shake up to 0.29, what
 * slips half and more.
 */
const slipSpreads = 1.2;
const slipBeside = 1 / 3;
const slipShare = 0.3;

/** Whether rough stretches stand on levels between their steps, as what sticks and slips does: in noise, steps follow steps. */
function slips({ view: { trace } }: Picture, stretches: readonly RoughStretch[]): boolean {
  let large = 0;
  let alone = 0;
  for (const { from, to, spread } of stretches) {
    const step = (row: number): number => Math.abs((trace.level[row] as number) - (trace.level[row - 1] as number));
    for (let row = from + 2; row < to; row++) {
      const own = step(row);
      if (own <= slipSpreads * spread) continue;
      large++;
      if (Math.max(step(row - 1), step(row + 1)) < slipBeside * own) alone++;
    }
  }
  return alone > slipShare * large;
}

/** Supply or wiring interference: the spread grows with no change of level, spikes of both signs. */
export const electricalNoise: Cause = {
  word: 'electrical-noise',
  meaning: 'supply or wiring interference',
  shows: 'spread of the samples grows with no change of level; spikes of both signs',
  otherBeams: 'show it too',
  action: 'Check supply, earthing, screening and joints; find what is switched at these times.',
  settles: 'Feed the beam from a battery or another supply for a day: if it is quiet, the supply is the cause.',
  claims: (picture) => {
    const own = shakingOrNoise(picture).noise.filter((r) => !isSunlit(picture, r) && !wanders(picture, r));
    if (own.length === 0 || slips(picture, own)) return [];
    const times = Math.max(...own.map((r) => r.times));
    const clear = Math.max(...own.map((r) => overWind(picture, r)));
    return spells(own.map((r) => [r.start, r.end] as const)).map((s) => ({
      start: s.start,
      end: s.end,
      episodes: s.episodes,
      confidence: Math.min(0.95, logistic(1.5 * (clear - 2.7))),
      severity: 'note' as const,
      summary: `The samples spread ${times.toFixed(1)} times as much as usual, with no change of level.`,
      evidence: [
        evidence('spread over the usual', times, 'times'),
        evidence('spread', percent(Math.max(...own.map((r) => r.spread))), '%'),
        ...(clear < times
          ? [
              evidence(
                'daily swing, as the wind may move it too',
                percent(Math.max(...own.map((r) => swayAt(picture, r)))),
                '%',
              ),
            ]
          : []),
        evidence('greatest deviation over the spread', Math.max(...own.map((r) => r.crest)), ''),
      ],
    }));
  },
};
