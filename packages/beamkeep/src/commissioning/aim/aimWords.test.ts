import { describe, expect, it } from 'vitest';
import type { ScanFlagKind } from '../../optics/index.js';
import { type AimFacts, aimWords, flagWords } from './aimWords.js';

const exact = (value: number) => ({ value, low: value, high: value });
const facts: AimFacts = {
  axes: ['pan', 'tilt'],
  flags: [],
  loss: exact(0.1),
  offset: [exact(0.1)],
  halfAngle: [exact(0.7)],
  alarm: { threshold: 35, degrees: exact(0.4), millimetres: exact(430), degreesOnPeak: 0.55 },
  moves: [],
};

describe('aimWords', () => {
  it('is good without doubts and with little loss', () =>
    expect(aimWords(facts)).toMatchObject({ verdict: 'good', actions: [] }));
  it.each([
    'second-peak',
    'shoulder',
    'raised-floor',
    'clipped',
    'few-points',
    'peak-not-crossed',
    'noisy',
  ] satisfies ScanFlagKind[])('%s is a reason to look again, with a sentence and what to do', (kind) => {
    const words = aimWords({ ...facts, flags: [{ kind, at: [1.2], size: 0.1 }] });
    expect(words.verdict).toBe('look again');
    expect(words.sentences[0]).toBe(flagWords({ kind, at: [1.2], size: 0.1 }, ['pan']));
    expect(words.actions).toHaveLength(1);
  });
  it('does not send a head onto a peak that may be a reflection', () => {
    const doubtful = aimWords({ ...facts, loss: exact(2), flags: [{ kind: 'second-peak', at: [1.2], size: 0.3 }] });
    expect(doubtful.actions.join(' ')).toContain('only once it is certain');
    expect(aimWords({ ...facts, loss: exact(2) }).actions.join(' ')).toContain('it wins 2 dB');
  });
  it('says so where no turn ever alarms', () => {
    const never = { ...facts.alarm, degrees: exact(Number.POSITIVE_INFINITY) };
    expect(aimWords({ ...facts, alarm: never }).sentences.join(' ')).toContain('No turn of the head ever reads 35 %');
  });
  it('0.5 dB is the flank: told with its limits, and what re-aiming wins', () => {
    const lost = (value: number) => aimWords({ ...facts, loss: { value, low: 0.4, high: 0.6 }, offset: [exact(-0.3)] });
    expect(lost(0.49)).toMatchObject({ verdict: 'good', actions: [] });
    expect(lost(0.49).sentences[0]).toBe('The head was left 0.3 degrees off the peak: 0.49 dB (0.4 to 0.6).');
    expect(lost(0.5)).toMatchObject({
      verdict: 'look again',
      actions: [expect.stringContaining('it wins 0.5 dB now')],
    });
    expect(lost(0.5).sentences[0]).toBe(
      'The head was left on the flank: 0.3 degrees off the peak, which costs 0.5 dB (0.4 to 0.6).',
    );
  });
  it('a floor that comes back, or few readings, are no reason to doubt the peak', () => {
    for (const kind of ['raised-floor', 'few-points'] as const) {
      const { actions } = aimWords({ ...facts, loss: exact(2), flags: [{ kind, size: 0.1 }] });
      expect(actions).toEqual([expect.any(String), expect.stringContaining('it wins 2 dB')]);
    }
  });
  it('nobody told where it was left: not known, with the margin of a head on the peak', () => {
    const { verdict, sentences } = aimWords({ ...facts, loss: undefined, offset: [] });
    expect(verdict).toBe('not known');
    expect(sentences.join(' ')).not.toContain('on the peak it would be');
    expect(aimWords({ ...facts, loss: undefined, flags: [{ kind: 'noisy', size: 0.1 }] }).verdict).toBe('look again');
  });
  it('tells the margin with its limits, none of them below nothing, and what it would be on the peak', () => {
    const alarm = { ...facts.alarm, degrees: { value: 0.4, low: -0.1, high: 0.9 } };
    expect(aimWords({ ...facts, alarm }).sentences[2]).toBe(
      'It may turn 0.4 degrees (0 to 0.9) before it reads 35 %: 430 mm at the far end; on the peak it would be 0.55 degrees.',
    );
  });
  it('over two axes tells both angles, and which is which', () => {
    const two = { ...facts, offset: [exact(0.1), exact(-0.2)], halfAngle: [exact(0.7), exact(0.5)] };
    expect(aimWords(two).sentences[0]).toContain('left 0.1 degrees (pan) and 0.2 degrees (tilt) off the peak');
    expect(aimWords(two).sentences[1]).toBe(
      'The received level halves 0.7 degrees (pan) and 0.5 degrees (tilt) off the peak.',
    );
    expect(flagWords({ kind: 'shoulder', at: [1, -0.5], size: 0.25 }, ['pan', 'tilt'])).toBe(
      'The flank at 1 degrees (pan) and -0.5 degrees (tilt) stands 25 % of the peak too high: a reflection that overlaps the lobe.',
    );
    expect(flagWords({ kind: 'second-peak', size: 0.25 }, [])).toMatch(/^A second peak stands, 25 % of the peak above/);
  });
  it('says how many readings there were, and what did not fall', () => {
    expect(flagWords({ kind: 'few-points', size: 6 }, [])).toMatch(/^Only 6 readings:/);
    expect(flagWords({ kind: 'peak-not-crossed', at: [0], size: 1 }, ['pan'])).toContain('does not fall on both sides');
    expect(flagWords({ kind: 'noisy', size: 0.12 }, [])).toBe(
      'The readings scatter by 12 % of the peak: the centre is in doubt.',
    );
  });
  it('one doubt that comes twice is acted on once', () =>
    expect(
      aimWords({
        ...facts,
        flags: [
          { kind: 'shoulder', at: [1], size: 0.1 },
          { kind: 'shoulder', at: [-1], size: 0.1 },
        ],
      }).actions,
    ).toHaveLength(1));
  it('tells movements of the structure that use more than half of the margin, or all, or that nobody can judge', () => {
    const move = { what: 'a roof', degrees: 0.3, millimetres: 10, formula: '', source: '', seen: 'read' } as const;
    const moved = (verdict: 'within' | 'tight' | 'beyond' | 'not known', share: number) =>
      aimWords({ ...facts, moves: [{ ...move, verdict, share }] });
    expect(moved('within', 0.2).sentences.join(' ')).not.toContain('roof');
    expect(moved('within', 0.2).actions).toEqual([]);
    expect(moved('tight', 0.756).sentences.at(-1)).toBe(
      'A roof may turn the head by as much as 0.3 degrees: 76 % of the margin.',
    );
    expect(moved('beyond', 1.5).sentences.at(-1)).toContain('0.3 degrees: more than the margin.');
    expect(moved('not known', Number.NaN).sentences.at(-1)).toBe('A roof may turn the head by as much as 0.3 degrees.');
    expect(moved('tight', 0.7).actions).toEqual([expect.stringContaining('structural engineer')]);
    expect(moved('beyond', 1.5).actions).toEqual([expect.stringContaining('structural engineer')]);
    expect(moved('not known', Number.NaN).actions).toEqual([]);
  });
});
