import { describe, expect, it } from 'vitest';
import { parseSite } from '../../site/index.js';
import type { Excursion } from './excursions.js';
import { expectedSteps } from './expected.js';
import { resetsTaken } from './resetsTaken.js';
import { type ProofStep, parseProofSheet } from './step.js';

const [beam] = parseSite({ beams: [{ id: 'B1', layout: 'reflective', separation: 62 }] }).beams;
if (!beam) throw new Error('no beam');

const [slowly, away, reset, atOnce]: ProofStep[] = [
  { do: 'cover-slowly' },
  { do: 'uncover' },
  { do: 'reset' },
  { do: 'cover-at-once' },
];
const stay = (start: number, end: number) => ({ start, end }) as Excursion;
const first = stay(20, 50);
const second = stay(100, 130);

/** Instants are plain numbers here; the log ends at 200. */
function taken(
  steps: readonly (ProofStep | undefined)[],
  stays: readonly (Excursion | undefined)[],
  told: number[] = [],
  written: Record<number, number> = {},
) {
  if (!beam) throw new Error('no beam');
  const sheet = parseProofSheet({ format: 'beamkeep-proof-sheet/1', beam: 'B1', steps });
  const times = steps.map((_, row) => written[row] ?? Number.NaN);
  return resetsTaken(expectedSteps(sheet, beam), stays, told, times, 200);
}
const full = [slowly, away, reset, atOnce, away];
const stays = [first, first, undefined, second, second];

describe('resetsTaken', () => {
  it('is of reset steps only', () =>
    expect(taken(full, stays, [70])).toEqual([undefined, undefined, { at: 70, told: true }, undefined, undefined]));
  it('takes the time in the sheet before any other', () =>
    expect(taken(full, stays, [70], { 2: 60 })[2]).toEqual({ at: 60, told: true }));
  it('a reset told before the cover was off, or after the next one went on, is not this one', () => {
    expect(taken(full, stays, [40, 110])[2]).toEqual({ at: 75, told: false });
    expect(taken(full, stays, [50, 100])[2]?.told).toBe(false);
    expect(taken(full, stays, [50, 99])[2]).toEqual({ at: 99, told: true });
  });
  it('nobody wrote it down: half way through the clean air it stands in', () => {
    expect(taken(full, stays)[2]).toEqual({ at: 75, told: false });
    expect(taken([slowly, away, reset], [first, first, undefined])[2]).toEqual({ at: 125, told: false });
  });
  it('before anything was covered nothing can be guessed', () =>
    expect(taken([reset, slowly], [undefined, first])[0]).toBeUndefined());
  it('two resets in one stretch of clean air are two, and one that was told serves once', () => {
    const twice = [slowly, away, reset, reset, atOnce];
    const around = [first, first, undefined, undefined, second];
    expect(taken(twice, around, [60, 80]).slice(2, 4)).toEqual([
      { at: 60, told: true },
      { at: 80, told: true },
    ]);
    expect(taken(twice, around, [60]).slice(2, 4)).toEqual([
      { at: 60, told: true },
      { at: 75, told: false },
    ]);
  });
});
