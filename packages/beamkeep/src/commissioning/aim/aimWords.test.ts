import { describe, expect, it } from 'vitest';
import type { ScanFlagKind } from '../../optics/index.js';
import { type AimFacts, aimWords, flagWords } from './aimWords.js';

const exact = (value: number) => ({ value, low: value, high: value });
const facts: AimFacts = {
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
    expect(words.sentences[0]).toBe(flagWords({ kind, at: [1.2], size: 0.1 }));
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
});
