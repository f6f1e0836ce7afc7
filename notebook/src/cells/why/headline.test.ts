import { describe, expect, it } from 'vitest';
import { headline, inNames } from './headline.js';

const dust = { cause: 'process-aerosol', days: 14 } as const;
const smoke = { cause: 'smoke-like', days: 2 } as const;

describe('headline', () => {
  it('counts the days, and says of smoke what it asks for', () =>
    expect(headline([dust, smoke], true)).toEqual([
      { cause: 'Dust or steam from work', rest: 'at this hour on 14 days' },
      { cause: 'Cannot be told from smoke', rest: 'at this hour on 2 days: treat each as fire' },
    ]));
  it('counts nothing for one moment', () =>
    expect(headline([{ ...smoke, days: 1 }, dust], false)).toEqual([
      { cause: 'Cannot be told from smoke', rest: ': treat as fire' },
      { cause: 'Dust or steam from work', rest: '' },
    ]));
  it('is empty where nothing was found', () => expect(headline([], true)).toEqual([]));
});

describe('inNames', () => {
  it('names a cause at the begin of a sentence, and the one that work is for', () => {
    expect(inNames('process-aerosol (72 %), at this hour on 14 days: Ragged dips.', [dust])).toBe(
      'Dust or steam from work (72 %), at this hour on 14 days: Ragged dips.',
    );
    expect(inNames('smoke-like (treat as fire, 85 %), at this hour on 2 days: A rise.', [smoke])).toBe(
      'Cannot be told from smoke (treat as fire, 85 %), at this hour on 2 days: A rise.',
    );
    expect(inNames('Treat as fire. Then, for process-aerosol: Find the work.', [dust, smoke])).toBe(
      'Treat as fire. Then, for dust or steam from work: Find the work.',
    );
  });
  it('leaves all else as it is', () =>
    expect(inNames('contamination builds up', [{ cause: 'contamination' }])).toBe('contamination builds up'));
});
