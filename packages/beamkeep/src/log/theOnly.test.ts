import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { logHead } from './head.js';
import { listed, notFound, theOnly } from './theOnly.js';

describe('names in messages', () => {
  it('a dozen are listed, the rest counted', () => {
    expect(listed(['a', 'b'])).toBe('"a", "b"');
    expect(listed(Array.from({ length: 15 }, (_, at) => `c${at}`))).toMatch(/"c11" and 3 more$/);
  });
  it('the nearest is named where it may have been meant', () => {
    expect(notFound('beam_l', ['time', 'beam_1'], 'column')).toBe(
      'no column "beam_l": is it "beam_1"? (there are "time", "beam_1")',
    );
    expect(notFound('north', ['time', 'b1'], 'column')).toBe('no column "north" (there are "time", "b1")');
  });
});

it('theOnly: one column of a name', () => {
  const head = logHead('a.csv', strToU8('time,b1,b1\n1,2,3\n'), true, 9);
  expect(theOnly(head, 'time', 'timeColumn')).toBe(0);
  expect(() => theOnly(head, 'b1', 'beams[0] signalColumn')).toThrow(
    'a.csv:1: beams[0] signalColumn: two columns are named "b1"',
  );
});
