import { describe, expect, it } from 'vitest';
import { blockWatch, clearBelow, isFast, reached } from './blockWatch.js';

const told = (samples: readonly (readonly [number, number])[], holds = false) => {
  const watch = blockWatch(10, 90, holds);
  return samples.map(([seconds, obscuration]) => (watch.feed(seconds * 1000, obscuration) ? 'blocked' : '-')).join(' ');
};

describe('blockWatch', () => {
  it('takes a fast total loss for a blocked beam, while it stays', () =>
    expect(
      told([
        [0, 1],
        [1, 95],
        [2, 99],
        [3, 80],
        [4, 99],
      ]),
    ).toBe('- blocked blocked - -'));
  it('needs clear air before the next', () =>
    expect(
      told([
        [0, 1],
        [1, 95],
        [2, 9],
        [3, 95],
      ]),
    ).toBe('- blocked - blocked'));
  it('allows 2 s, and no more', () => {
    expect(
      told([
        [0, 1],
        [2, 95],
      ]),
    ).toBe('- blocked');
    expect(
      told([
        [0, 1],
        [2.001, 95],
      ]),
    ).toBe('- -');
  });
  it('counts from the end of a held value', () => {
    expect(
      told(
        [
          [0, 1],
          [500, 95],
        ],
        true,
      ),
    ).toBe('- blocked');
    expect(
      told(
        [
          [0, 1],
          [500, 50],
          [502, 95],
        ],
        true,
      ),
    ).toBe('- - -');
  });
  it('forgets when asked to', () => {
    const watch = blockWatch(10, 90, false);
    watch.feed(0, 1);
    watch.feed(1000, 95);
    watch.forget();
    expect(watch.feed(2000, 95)).toBe(false);
  });
});

describe('clearBelow', () => {
  it.each([
    [35, 10],
    [10, 10],
    [8, 8],
  ])('with an alarm threshold of %d %%', (alarmThreshold, clear) => expect(clearBelow(alarmThreshold)).toBe(clear));
});

describe('isFast', () => {
  it('includes the 2 s between samples, and leaves them out after a held value', () => {
    expect([isFast(2000, false), isFast(2000, true), isFast(1999, true), isFast(2001, false)]).toEqual([
      true,
      false,
      true,
      false,
    ]);
  });
});

describe('reached', () => {
  it('forgives rounding, and is never reached by a missing sample', () => {
    expect([reached(35, 35), reached(34.9999999999, 35), reached(34.9999, 35), reached(Number.NaN, 35)]).toEqual([
      true,
      true,
      false,
      false,
    ]);
  });
});
