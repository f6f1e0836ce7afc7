import { type BeamStanding, changeOf, comparedBeam } from 'beamkeep/diagnosis';
import { describe, expect, it } from 'vitest';
import { changeInWords, compareSentences, unmatched } from './compareWords.js';

const standing = (id: string, loss: number, more: Partial<BeamStanding> = {}): BeamStanding => {
  const days = [0, 0.02, -0.02, 0.01, -0.01];
  return {
    id,
    from: 0,
    to: 1,
    stepped: false,
    alarmDecibels: 1.87,
    byDay: {
      start: days.map((_, i) => i),
      loss: days.map((day) => loss + day),
      low: days.map((day) => loss + 0.3 + day),
      swing: days.map((day) => 0.5 + day),
      warmth: days.map(() => Number.NaN),
    },
    noise: 0.1,
    aim: null,
    findings: [],
    ...more,
  };
};
const told = (before: BeamStanding, after: BeamStanding): string =>
  compareSentences(comparedBeam(before, after)).join(' ');

describe('words of a comparison', () => {
  it('says what is won, what is left, and where nothing is clear', () => {
    const words = told(standing('B1', 1.2), standing('B1', 0.2, { noise: 0.3 }));
    expect(words).toMatch(/it loses 0\.2 dB on a usual day, before it was 1\.2 dB: 1 dB are won/);
    expect(words).toMatch(/1\.4 dB are left to the alarm threshold; before it was 0\.37 dB/);
    expect(words).toMatch(/swings 0\.5 dB a day, before it was 0\.5 dB: no clear change/);
    expect(words).toMatch(/noisier/);
    expect(told(standing('B1', 0.2), standing('B1', 0.5))).toMatch(/0\.3 dB more are lost now/);
    expect(told(standing('B1', 0.2), standing('B1', 0.2))).toMatch(/no clear change/);
  });

  it('never says that smoke is gone', () => {
    const smoke = { cause: 'smoke-like', severity: 'act', confidence: 0.4, times: 9 } as const;
    const dust = { cause: 'process-aerosol', severity: 'note', confidence: 0.9, times: 9 } as const;
    const words = told(standing('B1', 0.2, { findings: [smoke, dust] }), standing('B1', 0.2));
    expect(words).toMatch(/Gone, though it should have come again by now: dust or steam from work\./);
    expect(words).toMatch(/does not say what it was/);
    expect(told(standing('B1', 0.2), standing('B1', 0.2, { findings: [smoke] }))).toMatch(/treat it as fire/);
  });

  it('says what cannot be compared', () => {
    expect(
      told(
        standing('B1', 0.2),
        standing('B1', 0.2, { byDay: { start: [], loss: [], low: [], swing: [], warmth: [] } }),
      ),
    ).toMatch(/the log after holds no usable day/);
    expect(unmatched([standing('B1', 0), standing('B2', 0)], [standing('B2', 0), standing('B3', 0)])).toEqual([
      'Only in the log before: B1.',
      'Only in the log after: B3.',
    ]);
    expect(changeInWords(changeOf([], [1]), 'dB')).toBe('not to be told');
    expect(changeInWords(changeOf([1, 1.1], [0.4, 0.5]), 'dB')).toMatch(/1\.\d+ to 0\.45 dB: −0\.6 \(/);
  });
});
