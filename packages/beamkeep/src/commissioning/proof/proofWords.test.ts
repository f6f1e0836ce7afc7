import { describe, expect, it } from 'vitest';
import { parseSite } from '../../site/index.js';
import { planAnswer } from '../answers/proofAnswer.js';
import { expectedSteps } from './expected.js';
import { mustShow, proofVerdictWords } from './proofWords.js';
import { parseProofSheet } from './step.js';

const [beam] = parseSite({
  format: 'beamkeep-site/1',
  name: 'Hall',
  beams: [{ id: 'B1', layout: 'reflective', separation: 40, alarmThreshold: 35, alarmDelay: 8 }],
}).beams;

const shown = (...steps: readonly object[]): string[] => {
  if (!beam) throw new Error('the site has a beam');
  const sheet = parseProofSheet({ format: 'beamkeep-proof-sheet/1', beam: 'B1', steps });
  return planAnswer(sheet, expectedSteps(sheet, beam), []).steps.map(mustShow);
};

describe('mustShow', () => {
  it('says what a step takes, what it may signal and how long it is held', () => {
    expect(shown({ do: 'filter', transmittance: 0.9 }, { do: 'cover-slowly' }, { do: 'uncover' })).toEqual([
      'Must show: takes 19 % (16 to 22); no new signal; state normal; hold it 30 s.',
      'Must show: fire 8 to 13 s after the threshold is reached; hold it 18 s.',
      'Must show: no new signal; state fire.',
    ]);
  });
  it('every verdict has its words', () => expect(Object.keys(proofVerdictWords)).toEqual(['pass', 'open', 'fail']));
});
