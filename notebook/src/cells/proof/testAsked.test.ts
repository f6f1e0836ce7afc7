import { describe, expect, it } from 'vitest';
import { freshSettings } from '../../sheet/sheet.js';
import { secondsAhead, testAsked } from './testAsked.js';

const fresh = freshSettings.proof;
const test = { name: 'proof.csv', text: 'time,b1\n' };

describe('testAsked', () => {
  it('asks nothing without a test', () => expect(testAsked(fresh, 'B1')).toBeNull());

  it('takes a clock that is no number as right', () => {
    expect(testAsked({ ...fresh, test, clockOffset: '140' }, 'B1')?.clockOffsetSeconds).toBe(140);
    expect(testAsked({ ...fresh, test, clockOffset: 'fast' }, 'B1')?.clockOffsetSeconds).toBe(0);
  });

  it.each([
    ['', 0],
    ['-2,5', -2.5],
    ['fast', Number.NaN],
  ])('clock %j', (typed, seconds) => expect(secondsAhead(typed)).toBe(seconds));
});
