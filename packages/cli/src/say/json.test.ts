import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { json } from './json.js';

describe('json', () => {
  it('keeps the order of the keys and ends with a line feed', () => {
    expect(json({ b: 1, a: [2] })).toBe('{\n  "b": 1,\n  "a": [\n    2\n  ]\n}\n');
  });
  it('sends no control character to a terminal, not even those that JSON allows', () => {
    expect(json('\u001b[31m \u009b31m \u202e \u{e0001}')).toBe('"\\u001b[31m \\u009b31m \\u202e \\udb40\\udc01"\n');
  });
  it('law: means what it meant', () => {
    fc.assert(
      fc.property(fc.jsonValue({ stringUnit: 'binary' }), (value) => {
        expect(JSON.parse(json(value))).toEqual(JSON.parse(JSON.stringify(value)));
      }),
      { seed: 2 },
    );
  });
});
