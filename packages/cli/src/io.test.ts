import { describe, expect, it } from 'vitest';
import { knowsUnicode, lineWidth, wantsColour } from './io.js';

const write = () => true;

describe('wantsColour', () => {
  it('only on a terminal', () => {
    expect(wantsColour({ write, isTTY: true }, {})).toBe(true);
    expect(wantsColour({ write }, {})).toBe(false);
  });
  it('not against NO_COLOR, which counts when it is not empty (no-color.org)', () => {
    expect(wantsColour({ write, isTTY: true }, { NO_COLOR: '1' })).toBe(false);
    expect(wantsColour({ write, isTTY: true }, { NO_COLOR: '' })).toBe(true);
  });
  it('not on a dumb terminal', () => expect(wantsColour({ write, isTTY: true }, { TERM: 'dumb' })).toBe(false));
});

describe('knowsUnicode', () => {
  it('follows the locale, LC_ALL before LANG', () => {
    expect(knowsUnicode({ LANG: 'pt_PT.UTF-8' })).toBe(true);
    expect(knowsUnicode({ LANG: 'C' })).toBe(false);
    expect(knowsUnicode({ LANG: 'C', LC_ALL: 'C.utf8' })).toBe(true);
    expect(knowsUnicode({})).toBe(true);
  });
  it('knows terminals that lack the signs', () => expect(knowsUnicode({ TERM: 'linux' })).toBe(false));
});

describe('lineWidth', () => {
  it('is 80 without a terminal, and kept readable with one', () => {
    expect(lineWidth({ write, columns: 200 })).toBe(80);
    expect(lineWidth({ write, isTTY: true, columns: 200 })).toBe(110);
    expect(lineWidth({ write, isTTY: true, columns: 20 })).toBe(60);
    expect(lineWidth({ write, isTTY: true, columns: 95 })).toBe(95);
  });
});
