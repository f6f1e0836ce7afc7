import { describe, expect, it } from 'vitest';
import { fireFromWords } from './fireFromWords.js';

describe('fireFromWords', () => {
  it('knows the growth classes, steady and smouldering fires', () => {
    expect(fireFromWords('fast').words).toBe('t-squared, fast: 1055 kW in 150 s, wood');
    expect(fireFromWords('ultra-fast:polyurethaneFoam').words).toContain('polyurethane foam');
    expect(fireFromWords('200kW:heptane').heat(10)).toBe(200);
    expect(fireFromWords('2.5kW').heat(10)).toBe(2.5);
    expect(fireFromWords('smouldering').fuel.kind).toBe('smouldering');
  });
  it('says what must change', () => {
    for (const name of ['', 'quick', 'fast:wood:oak', ':wood', '200 kW'])
      expect(() => fireFromWords(name)).toThrow(`fire "${name}" is not known: use slow, medium, fast, ultra-fast`);
    expect(() => fireFromWords('fast:oak')).toThrow('fuel "oak" is not known');
  });
});
