import { describe, expect, it } from 'vitest';
import { readJson } from './readJson.js';

describe('readJson', () => {
  it('reads JSON with or without a byte-order mark', () => {
    expect(readJson('\ufeff{"a": [1, 2]}', 'depot.json')).toEqual({ a: [1, 2] });
  });

  it.each([
    ['', 'depot.json: the file is empty: a site file is a JSON object.'],
    [' \n', 'depot.json: the file is empty: a site file is a JSON object.'],
    ['{\n  "a": 1\n  "b": 2\n}', 'depot.json:3:3: not JSON: unexpected "\\"" (is a comma missing before it?).'],
    ['{\n  "a": 1,\n}', 'depot.json:3:1: not JSON: unexpected "}" (the comma before it is one too many).'],
    ["{ 'a': 1 }", 'depot.json:1:3: not JSON: unexpected "\'" (texts stand in double quotes).'],
    ['{ // a note\n}', 'depot.json:1:3: not JSON: unexpected "/" (JSON has no comments).'],
    ['{ "a": 1', 'depot.json:1:9: not JSON: the file ends too early.'],
    ['{ "a": NaN }', 'depot.json:1:8: not JSON: unexpected "N".'],
    ['time,b1\n2027', 'depot.json:1:1: not JSON: unexpected "t" (a site file is a JSON object and begins with "{").'],
    ['{"a": "x\ny"}', 'depot.json:1:9: not JSON: a text in it holds a line break or another control character.'],
    ['{\n "a": { "b": 1,\n "b": 2 } }', 'depot.json:3: the key "b" is given twice: keep one of them.'],
    [
      `{"a": "${'x'.repeat(4_000_000)}"}`,
      'depot.json: 4000009 characters are too many for a site file: is this the log?',
    ],
  ])('says what is wrong with %j', (text, message) => expect(() => readJson(text, 'depot.json')).toThrow(message));
});
