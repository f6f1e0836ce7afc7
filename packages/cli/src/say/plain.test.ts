import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plain, plainly } from './plain.js';
import { unsafe } from './unsafe.js';

describe('plain', () => {
  it('shows terminal escapes instead of sending them', () => {
    expect(plain('B1\u001b[31mred\u001b[0m')).toBe('B1\\u{1b}[31mred\\u{1b}[0m');
    expect(plain('\u009b2J')).toBe('\\u{9b}2J');
    expect(plain('bell\u0007')).toBe('bell\\u{07}');
  });
  it('keeps one line', () => expect(plain('a\r\nb\tc\u2028d')).toBe('a\\r\\nb\\tc\\u{2028}d'));
  it('does not let a name turn the writing direction', () => expect(plain('a\u202eb')).toBe('a\\u{202e}b'));
  it('shows half a surrogate pair', () => expect(plain('a\ud800')).toBe('a\\u{d800}'));
  it('leaves letters of every script alone', () => {
    const name = 'Halle 3, Süd – 倉庫 Ελλάδα 🚋 °C µm';
    expect(plain(name)).toBe(name);
  });
  it('cuts what would flood the screen, and says so', () => {
    expect(plain('x'.repeat(5000))).toHaveLength(1003);
    expect(plain('x'.repeat(20), 10)).toBe('xxxxxxxxxx...');
  });
  it('law: nothing unsafe is left, whatever the text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(plain(text)).not.toMatch(unsafe);
      }),
      { seed: 1 },
    );
  });
});

describe('plainly', () => {
  it('reaches every text of an answer and nothing else', () => {
    const answer = { id: 'a\u0000', list: ['\u001b', 1, null, true], deep: { time: 3, text: 'ok' } };
    expect(plainly(answer)).toEqual({
      id: 'a\\u{00}',
      list: ['\\u{1b}', 1, null, true],
      deep: { time: 3, text: 'ok' },
    });
  });
});
