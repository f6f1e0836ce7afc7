import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jsonFlaw } from './jsonFlaw.js';

/** Whether JSON.parse takes it. */
function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

describe('jsonFlaw', () => {
  it.each([
    ['{"a": 1,}', 8, 'unexpected'],
    ['[1 2]', 3, 'unexpected'],
    ['[1, 2', 5, 'early end'],
    ['{"a', 3, 'early end'],
    ['{"a": "x\ny"}', 8, 'control character'],
    ['{"a": "\\x"}', 7, 'unexpected'],
    ['{"a": 1 "b": 2}', 8, 'unexpected'],
    ['01', 1, 'unexpected'],
    ['{} {}', 3, 'unexpected'],
    ['{"a": {"b": 1}, "a": 2}', 16, 'doubled key'],
    ['{"a": 1, "\\u0061": 2}', 9, 'doubled key'],
    ['{"a": [}', 7, 'unexpected'],
  ])('in %j stands at %i: %s', (text, offset, kind) => expect(jsonFlaw(text)).toMatchObject({ offset, kind }));

  it('is none in what JSON.stringify writes', () =>
    fc.assert(
      fc.property(fc.jsonValue(), fc.nat(3), (value, indent) => {
        expect(jsonFlaw(JSON.stringify(value, null, indent))).toBeUndefined();
      }),
      { seed: 1 },
    ));

  it('law: it finds a flaw, doubled keys aside, exactly where JSON.parse refuses', () =>
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...'{}[],:" \n\\1-.eu0', '"a"', 'true', 'null', '1e9'), { maxLength: 9 }),
        (pieces) => {
          const text = pieces.join('');
          const flaw = jsonFlaw(text);
          expect(flaw === undefined || flaw.kind === 'doubled key').toBe(isJson(text));
        },
      ),
      { seed: 2, numRuns: 5000 },
    ));

  it('does not follow a nesting without end', () =>
    expect(jsonFlaw('['.repeat(1e6))).toEqual({ offset: 1000, kind: 'too deep' }));

  it('takes a long text in one go', () => expect(jsonFlaw(`"${'x'.repeat(3_900_000)}`)?.kind).toBe('early end'));
});
