import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { readDocument } from './readDocument.js';

const schema = v.strictObject({
  format: v.literal('a/1'),
  size: v.optional(v.strictObject({ width: v.number(), height: v.optional(v.number()) })),
  steps: v.optional(
    v.array(
      v.variant('do', [
        v.strictObject({
          do: v.literal('push'),
          hold: v.optional(v.number()),
          at: v.optional(v.strictObject({ x: v.number() })),
        }),
        v.strictObject({ do: v.literal('pull'), note: v.optional(v.string()) }),
      ]),
    ),
  ),
  on: v.optional(v.boolean()),
  way: v.optional(v.picklist(['edge', 'middle'])),
  people: v.optional(v.nullable(v.array(v.strictObject({ name: v.string() })))),
  share: v.optional(
    v.pipe(
      v.number(),
      v.check((value) => value < 1, 'give a share below 1'),
    ),
  ),
});
const read = (document: unknown) => readDocument(document, schema, 'a.json');
const refused = (document: unknown) => {
  try {
    read(document);
  } catch (error) {
    return (error as Error).message;
  }
  return 'taken';
};
const base = { format: 'a/1' };

describe('readDocument', () => {
  it('takes JSON text, or the value that it holds', () => {
    expect(read('{"format":"a/1"}')).toEqual(base);
    expect(read({ ...base, people: null })).toEqual({ ...base, people: null });
  });
  it.each([
    [null, 'a.json: the document is null: use an object: { ... }'],
    ['[]', 'a.json: the document is a list: use an object: { ... }'],
    [7, 'a.json: the document is 7: use an object: { ... }'],
    [undefined, 'a.json: the document is undefined: use an object: { ... }'],
    [[base], 'a.json: the document is a list: use an object: { ... }'],
    ['{', expect.stringMatching(/^a\.json:1:2: not JSON/)],
  ])('%j is no document', (document, says) => expect(refused(document)).toEqual(says));
  it.each([
    [{ ...base, sizes: 1 }, 'a.json: unknown key "sizes": the nearest known key is "size"'],
    [{ ...base, sha: 1 }, 'a.json: unknown key "sha": the nearest known key is "share"'], // it begins like it
    [{ ...base, steps: [{ do: 'push', at: { x: 1, y: 2 } }] }, 'a.json: steps[0].at: unknown key "y"'],
    [{ ...base, size: { width: 1, WID: 2 } }, 'a.json: size: unknown key "WID": the nearest known key is "width"'],
    [{ ...base, SIZ: 1 }, 'a.json: unknown key "SIZ": the nearest known key is "size"'],
    [{ ...base, size: { width: 1, hight: 2 } }, 'a.json: size: unknown key "hight": the nearest known key is "height"'],
    [
      { ...base, people: [{ name: 'b' }, { name: 'c', nam: 'd' }] },
      'a.json: people[1]: unknown key "nam": the nearest known key is "name"',
    ],
    [
      { ...base, steps: [{ do: 'pull', hole: 1 }] },
      'a.json: steps[0]: unknown key "hole": the nearest known key is "hold"', // a key of either kind of step
    ],
  ])('a key that is not known would be lost: %j', (document, says) => expect(refused(document)).toBe(says));
  it.each([
    [{}, 'a.json: format is missing: use "a/1"'],
    [{ ...base, size: {} }, 'a.json: size.width is missing: use a number, without quotes'],
    [{ ...base, people: [{}] }, 'a.json: people[0].name is missing: use a text in quotes'],
    [{ ...base, steps: [{}] }, 'a.json: steps[0].do is missing'], // which of two steps it is, nothing tells
    [{ ...base, steps: [{ do: 'push', at: {} }] }, 'a.json: steps[0].at.x is missing'],
  ])('a key that is missing says what belongs there: %j', (document, says) => expect(refused(document)).toBe(says));
  it.each([
    [{ format: 'a/2' }, 'a.json: format is "a/2": use "a/1"'],
    [{ ...base, size: { width: '4' } }, 'a.json: size.width is "4": use a number, without quotes'],
    [{ ...base, size: { width: Number.NaN } }, 'a.json: size.width is NaN: use a number, without quotes'],
    [{ ...base, steps: [null] }, 'a.json: steps[0] is null: use an object: { ... }'],
    [{ ...base, people: [{ name: 'a' }, { name: null }] }, 'a.json: people[1].name is null: use a text in quotes'],
    [{ ...base, size: 4 }, 'a.json: size is 4: use an object: { ... }'],
    [{ ...base, on: 'yes' }, 'a.json: on is "yes": use true or false'],
    [{ ...base, steps: {} }, 'a.json: steps is an object: use a list: [ ... ]'],
    [{ ...base, way: 'top' }, 'a.json: way is "top": use "edge", "middle"'],
    [{ ...base, steps: [{ do: 'lift' }] }, 'a.json: steps[0].do is "lift": use "push", "pull"'],
    [{ ...base, share: 2 }, 'a.json: share is 2: give a share below 1'],
  ])('a value that is none says where, what it is and what it may be: %j', (document, says) =>
    expect(refused(document)).toBe(says),
  );
});
