import { describe, expect, it } from 'vitest';
import { siteOf } from '../../../../../tests/commissioning/answers.js';
import type { CoveredTest } from '../covered/coveredTest.js';
import { reachOf } from '../covered/reach.js';
import { coveredAnswer } from './coveredAnswer.js';

const stretch = { start: 1000, end: 9000, samples: 9, reading: 98, share: 1, spread: 0.002 };
const test: CoveredTest = {
  before: stretch,
  covered: { ...stretch, reading: 3.9, share: 0.7 },
  after: undefined,
  clean: 98,
  ratio: 0.7,
  ratioLow: 0.69,
  ratioHigh: 0.71,
  largestObscuration: 30,
  largestObscurationLow: 29,
  alarm: reachOf(35, 'smoke', 30),
  fault: reachOf(100, 'block', 100),
  drift: undefined,
  step: 0,
};
const reading = {
  trace: { start: '1970-01-01T00:00:00.000Z', seconds: [0], values: [1] },
  assumed: ['a'],
  input: { lines: 2, dropped: 0, notes: [] },
};
const answer = (settings: object = {}) => {
  const [beam] = siteOf(settings).beams;
  if (!beam) throw new Error('no beam');
  return coveredAnswer(test, beam, reading);
};

describe('coveredAnswer', () => {
  it('tells each stretch by ISO 8601, one that was not found by null', () =>
    expect(answer()).toMatchObject({
      format: 'beamkeep-covered/1',
      beam: 'B1',
      before: {
        from: '1970-01-01T00:00:01.000Z',
        to: '1970-01-01T00:00:09.000Z',
        samples: 9,
        reading: 98,
        share: 1,
        spread: 0.002,
      },
      covered: { reading: 3.9, share: 0.7 },
      after: null,
      drift: null,
      ratio: { value: 0.7, low: 0.69, high: 0.71 },
      largestObscuration: { value: 30, low: 29 },
      verdict: 'refuse',
      ...reading,
    }));
  it('a threshold that is never reached has no true smoke, one of all the light no end', () => {
    expect(answer().alarm).toMatchObject({
      threshold: 35,
      reachable: 'no',
      trueObscuration: null,
      trueDecibels: null,
      timesTheSmoke: null,
    });
    expect(answer().fault).toMatchObject({ trueObscuration: 100, decibels: 'infinite', trueDecibels: 'infinite' });
  });
  it('what the site file says of the residue stands beside it, where it says anything', () => {
    expect(answer().ratioOfSiteFile).toBeCloseTo(3.92 / 98, 12);
    expect(answer({ covered: undefined }).ratioOfSiteFile).toBeNull();
  });
  it('comes back through JSON as it was', () => expect(JSON.parse(JSON.stringify(answer()))).toEqual(answer()));
});
