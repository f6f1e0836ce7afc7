import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unparted, wrap } from './wrap.js';

describe('wrap', () => {
  it('breaks between words and leads the other lines', () => {
    expect(wrap('one two three four', 11, '- ', '  ')).toBe('- one two\n  three\n  four');
  });
  it('lets a long word stand alone', () => expect(wrap('a verylongword b', 6)).toBe('a\nverylongword\nb'));
  it('keeps a number with its unit', () => expect(wrap('length 12\u00a0min', 10)).toBe('length\n12 min'));
  it('gives one empty line for no words', () => expect(wrap('', 10)).toBe(''));
  it('law: no word is lost, none is moved', () => {
    fc.assert(
      fc.property(fc.array(fc.stringMatching(/^[a-z]{1,12}$/)), fc.integer({ min: 1, max: 40 }), (words, width) => {
        expect(wrap(words.join(' '), width).split(/\s+/).filter(Boolean)).toEqual(words);
      }),
      { seed: 3 },
    );
  });
});

describe('unparted', () => {
  it('keeps numbers with their units', () => {
    expect(wrap(unparted('some 7 h about'), 7)).toBe('some\n7 h\nabout');
    expect(unparted('14.2 %, 60 s, 3 days and 2 hours')).toBe('14.2\u00a0%, 60\u00a0s, 3\u00a0days and 2 hours');
  });
});
