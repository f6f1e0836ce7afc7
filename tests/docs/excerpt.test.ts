import { describe, expect, it } from 'vitest';
import { renewed } from './excerpt.js';

const printed = 'B1  watch\n  slope -0.17 %/day\n  swing 10.3 %\nB2  act\n';

describe('renewed', () => {
  it('leaves what is printed as it is', () =>
    expect(renewed('B1  watch\n…\nB2  act', printed)).toBe('B1  watch\n…\nB2  act'));
  it('puts in the numbers of today', () =>
    expect(renewed('…\n  swing 9.8 %\n…', printed)).toBe('…\n  swing 10.3 %\n…'));
  it('does not skip a line unseen', () =>
    expect(() => renewed('B1  watch\nB2  act', printed)).toThrow('no longer printed here: "B2  act"'));
  it('does not find what is not printed', () => expect(() => renewed('…\nB3  act', printed)).toThrow('"B3  act"'));
  it('does not end early unseen', () =>
    expect(() => renewed('B1  watch', printed)).toThrow('printed, but not shown: "  slope -0.17 %/day"'));
  it('takes other words where a line near them is known again', () =>
    expect(renewed('B1  act, noise\n  slope -0.2 %/day\n…', printed, true)).toBe('B1  watch\n  slope -0.17 %/day\n…'));
});
