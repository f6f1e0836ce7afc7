import { describe, expect, it } from 'vitest';
import { beamKeys, topKeys } from './siteKeys.js';
import { inWords, limitsInWords, wanted, within } from './wanted.js';

describe('limitsInWords', () => {
  it.each([
    [{ atLeast: 0, atMost: 5 }, 'from 0 to 5'],
    [{ above: 0, atMost: 5 }, 'above 0 and at most 5'],
    [{ atLeast: 0, below: 5 }, '0 or more and below 5'],
    [{ atLeast: 0 }, '0 or more'],
    [{}, ''],
  ])('%j', (limits, words) => expect(limitsInWords(limits)).toBe(words));
});

describe('within', () => {
  it('leaves out the ends that the limits leave out', () => {
    expect(within(0, { above: 0 })).toBe(false);
    expect(within(0, { atLeast: 0 })).toBe(true);
    expect(within(5, { below: 5 })).toBe(false);
    expect(within(5, { atMost: 5 })).toBe(true);
  });
  it('takes no number without end', () => expect(within(Number.POSITIVE_INFINITY)).toBe(false));
});

describe('wanted', () => {
  it('says limits and unit of a number', () => {
    expect(wanted(beamKeys.tilt)).toBe('give a number from -90 to 90 [degrees]');
    expect(wanted(beamKeys.cleanAir)).toBe('give a number [signalUnit]');
  });
  it('lists the words there are', () => expect(wanted(topKeys.sampling)).toBe('use "regular", "mean" or "on-change"'));
});

describe('inWords', () => {
  it.each([
    [[], ''],
    [['a'], 'a'],
    [['a', 'b'], 'a or b'],
    [['a', 'b', 'c'], 'a, b or c'],
  ])('%j', (words, text) => expect(inWords(words)).toBe(text));
});
