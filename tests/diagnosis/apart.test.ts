import { describe, expect, it } from 'vitest';
import { type CauseWord, causeWords } from '../../packages/beamkeep/src/diagnosis/index.js';
import { diagnosed, stated } from './kit.js';
import { healthy, typical } from './typical.js';

/** What a record of one cause rightly tells beside it. */
const beside: Partial<Record<CauseWord, readonly CauseWord[]>> = {
  cleaned: ['contamination'],
  // It moves with heat, too.
  'misalignment-drift': ['building-movement'],
  // Past the alarm threshold: always smoke-like.
  obstruction: ['smoke-like'],
};

describe('causes told apart', () => {
  it.each(causeWords)('%s is stated of its typical record, and no other cause', (cause) => {
    const diagnosis = diagnosed(typical[cause]());
    const said = causeWords.filter((word) => stated(diagnosis, word).length > 0);
    expect(said).toEqual(causeWords.filter((word) => word === cause || beside[cause]?.includes(word)));
  });
  it('nothing is said of a healthy beam', () => expect(diagnosed(healthy()).findings).toEqual([]));
});
