import { describe, expect, it } from 'vitest';
import { parseSite } from '../../site/index.js';
import type { Excursion } from './excursions.js';
import { expectedSteps } from './expected.js';
import { type ProofStep, parseProofSheet } from './step.js';
import { steppedThrough } from './steppedThrough.js';

const [beam] = parseSite({ beams: [{ id: 'B1', layout: 'reflective', separation: 62 }] }).beams;
if (!beam) throw new Error('no beam');

/** A stay at a minute of the test: how deep, and how fast it came. */
const stay = (minute: number, largest: number, riseSeconds: number): Excursion => ({
  from: 0,
  to: 1,
  start: 60_000 * minute,
  end: 60_000 * minute + 30_000,
  largest,
  held: largest,
  last: largest,
  alarmAt: 0,
  faultAt: 0,
  alarmHeldSeconds: 30,
  faultHeldSeconds: 30,
  riseSeconds,
});

/** For each step which stay it is, by number. */
function places(steps: readonly ProofStep[], list: readonly Excursion[], minutes: readonly number[] = []) {
  if (!beam) throw new Error('no beam');
  const sheet = parseProofSheet({ format: 'beamkeep-proof-sheet/1', beam: 'B1', steps });
  const times = steps.map((_, row) => 60_000 * (minutes[row] ?? Number.NaN));
  return steppedThrough(expectedSteps(sheet, beam), { clean: 0, intervalSeconds: 1, list }, beam, times).map(
    (found) => found && list.indexOf(found),
  );
}
const filter: ProofStep = { do: 'filter', transmittance: 0.9 }; // 19 %
const slowly: ProofStep = { do: 'cover-slowly' };
const atOnce: ProofStep = { do: 'cover-at-once' };
const uncover: ProofStep = { do: 'uncover' };

describe('steppedThrough', () => {
  it('an uncovering ends the stay before it; what takes no light has none', () =>
    expect(places([filter, uncover, { do: 'reset' }, slowly, uncover], [stay(1, 19, 5), stay(3, 99, 8)])).toEqual([
      0,
      0,
      undefined,
      1,
      1,
    ]));
  it('an uncovering after a cover that does not show ends nothing', () =>
    expect(places([slowly, uncover], [])).toEqual([undefined, undefined]));
  it('a filter is known by what it takes', () => {
    expect(places([filter], [stay(1, 60, 5), stay(2, 19, 5)])).toEqual([1]);
    expect(places([filter], [stay(1, 19, 5), stay(2, 60, 5)])).toEqual([0]);
  });
  it('a blocked beam is known by its speed and its depth, a slow cover likewise', () => {
    expect(places([atOnce], [stay(1, 99, 6), stay(2, 99, 1)])).toEqual([1]);
    expect(places([atOnce], [stay(1, 99, 2), stay(2, 99, 2.5)])).toEqual([0]);
    expect(places([atOnce], [stay(1, 50, 1), stay(2, 90, 1)])).toEqual([1]);
    expect(places([slowly], [stay(1, 99, 1), stay(2, 99, 6)])).toEqual([1]);
    expect(places([slowly], [stay(1, 20, Number.NaN), stay(2, 40, Number.NaN)])).toEqual([1]);
    expect(places([slowly], [stay(1, 60, Number.NaN), stay(2, 95, Number.NaN)])).toEqual([1]);
  });
  it('times that were written down decide between likes', () => {
    const alike = [stay(1, 19, 5), stay(4, 19, 5)];
    expect(places([filter], alike, [4])).toEqual([1]);
    expect(places([filter], alike, [1])).toEqual([0]);
  });
  it('a written time does not outweigh what the light shows', () =>
    expect(places([atOnce], [stay(1, 99, 1), stay(3, 15, Number.NaN)], [2.5])).toEqual([0]));
  it('a written time counts for no more than two minutes, however far off the clock was', () =>
    expect(places([filter], [stay(1, 19, 5)], [600])).toEqual([0]));
  it('a reset after a cover ends no stay', () =>
    expect(places([slowly, { do: 'reset' }, uncover], [stay(1, 99, 8)])).toEqual([0, undefined, 0]));
});
