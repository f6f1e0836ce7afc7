import { describe, expect, it } from 'vitest';
import type { CoveredTest } from './coveredTest.js';
import { coveredWords } from './coveredWords.js';
import { reachOf } from './reach.js';

const stretch = { start: 0, end: 1, samples: 2, reading: 98, share: 1, spread: 0 };

/** A test of a beam of which so much stays, give or take, thresholds 35 and 90 %. */
function testOf(
  ratio: number,
  off = 0.002,
  drift: CoveredTest['drift'] = { percent: 0, low: -1, high: 1, tells: false },
): CoveredTest {
  const [low, high] = [ratio - off, ratio + off];
  const largest = (share: number) => 100 * (1 - Math.max(share, 0));
  return {
    before: stretch,
    covered: { ...stretch, share: ratio },
    after: stretch,
    clean: 98,
    ratio,
    ratioLow: low,
    ratioHigh: high,
    largestObscuration: largest(ratio),
    largestObscurationLow: largest(high),
    alarm: reachOf(35, 'smoke', largest(ratio), largest(high), largest(low)),
    fault: reachOf(90, 'block', largest(ratio), largest(high), largest(low)),
    drift,
    step: 0,
  };
}
const plain = { coveredSubtracted: false };
const words = (...args: Parameters<typeof testOf>) => coveredWords(testOf(...args), plain);

describe('coveredWords', () => {
  it('a beam of which 2 % stay is fit, and says what it can read at most', () =>
    expect(words(0.02)).toEqual({
      verdict: 'fit',
      sentences: [
        'Covered, the beam still reads 2 % of its clean reading (95 % limits 1.8 to 2.2 %), so it can never read more than 98 % obscuration.',
      ],
      actions: [],
    }));
  it('no limit is told below nothing', () => expect(words(0.001).sentences[0]).toContain('(95 % limits 0 to 0.3 %)'));
  it('9 % need a tenth more smoke, in decibels: a caution, with figures', () => {
    const { verdict, sentences, actions } = words(0.095, 0.001);
    expect(verdict).toBe('caution');
    // 35 / 0.905 = 38.67 %: 2.123 dB instead of 1.871 dB
    expect(sentences[0]).toBe(
      'The alarm threshold says 35 % and needs 38.7 % of true obscuration: 2.12 dB instead of 1.87 dB, 1.1 times the smoke.',
    );
    expect(actions).toEqual([
      expect.stringMatching(/^Find what comes back without the beam/),
      'Then cover again. Until it is mended this beam counts as out of service.',
    ]);
  });
  it('a fault that darkness does not reach refuses the beam, though smoke would alarm', () => {
    const { verdict, sentences, actions } = words(0.12, 0.001);
    expect(verdict).toBe('refuse');
    expect(sentences[1]).toBe(
      'A blocked beam will not be told as a fault: the fault threshold is 90 %, and with the beam gone the most that can be read is 88 %.',
    );
    expect(actions[2]).toContain('coveredSubtracted');
  });
  it('in doubt is told as doubt', () => {
    expect(words(0.1, 0.01).sentences.join(' ')).toContain('A blocked beam may not be told as a fault');
    expect(words(0.65, 0.01).sentences[0]).toBe(
      'It is not certain that smoke can raise the alarm: the threshold is 35 %, and the most that this beam can read is 35 %, ' +
        'known no better than this test allows.',
    );
    expect(words(0.65, 0.01).verdict).toBe('refuse');
  });
  it('where no smoke can raise the alarm, that comes first', () =>
    expect(words(0.7).sentences[0]).toBe(
      'No smoke can raise the alarm: the threshold is 35 %, and this beam can never read more than 30 %.',
    ));
  it('equipment that takes the residue off is not told to do so', () => {
    const { sentences, actions } = coveredWords(testOf(0.5), { coveredSubtracted: true });
    expect(sentences.join(' ')).toContain('The equipment takes that off before it compares');
    expect(actions.join(' ')).not.toContain('coveredSubtracted');
  });
  it('a clean reading that rose or fell is told with its limits, and what to look for', () => {
    const drifted = (percent: number, low: number, high: number) =>
      words(0.02, 0.002, { percent, low, high, tells: true });
    expect(drifted(3, 2.5, 3.5).sentences.at(-1)).toBe(
      'The clean reading rose by 3 % (2.5 to 3.5 %) from before the cover to after it.',
    );
    expect(drifted(-3, -3.5, -2.5).sentences.at(-1)).toContain('fell by 3 % (-3.5 to -2.5 %)');
    expect(drifted(-3, -3.5, -2.5).actions).toEqual([expect.stringMatching(/^See what moved/)]);
  });
  it('one clean stretch alone: nobody can say, and how to do it again', () => {
    const test = { ...testOf(0.02), drift: undefined };
    const { sentences, actions } = coveredWords(test, plain);
    expect(sentences.at(-1)).toContain('One of the two clean stretches is missing');
    expect(actions).toEqual([expect.stringContaining('half a minute of clean air on both sides')]);
  });
});
