import { describe, expect, it } from 'vitest';
import { quoted } from './quoted.js';

describe('quoted', () => {
  it.each([
    ['35 %', '"35 %"'],
    ['a"b', '"a\\"b"'],
    ['\u001b[31m', '"\\u001b[31m"'],
    ['\u009b31m', '"\\u009b31m"'],
    ['\u202eevil', '"\\u202eevil"'],
    ['x'.repeat(70), `"${'x'.repeat(60)}…"`],
    [12, '12'],
    [null, 'null'],
    [undefined, 'undefined'],
    [false, 'false'],
    [[1, 2], 'a list'],
    [{ a: 1 }, 'an object'],
    [() => 1, 'a function'],
  ])('%j', (value, text) => expect(quoted(value)).toBe(text));
});
