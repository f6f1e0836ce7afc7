import { describe, expect, it } from 'vitest';
import type { EventTold } from '../../bench/reading.js';
import { eventRuns } from './eventRuns.js';

const event = (at: number, words: string, more: Partial<EventTold> = {}): EventTold => ({
  at,
  beam: 'B4',
  what: 'fault',
  state: 'normal',
  finding: null,
  words,
  ...more,
});

describe('eventRuns', () => {
  it('entries alike are one row, with the ends of the figures that differ', () => {
    const runs = eventRuns([
      event(1, 'Level 9.5 % at 07:19, alarm at 35 %.'),
      event(2, 'Level 12 % at 07:19, alarm at 35 %.'),
      event(3, 'Level 10 % at 07:19, alarm at 35 %.'),
    ]);
    expect(runs.map(({ words }) => words)).toEqual(['Level 9.5 to 12 % at 07:19, alarm at 35 %.']);
    expect(runs[0]?.events.map(({ at }) => at)).toEqual([1, 2, 3]);
  });
  it('two are left as they are', () =>
    expect(eventRuns([event(1, 'Level 9 %.'), event(2, 'Level 8 %.')]).map(({ words }) => words)).toEqual([
      'Level 9 %.',
      'Level 8 %.',
    ]));
  it.each<[string, Partial<EventTold>]>([
    ['another beam', { beam: 'B3' }],
    ['another word of the panel', { what: 'fire' }],
    ['another finding', { finding: { number: 7, cause: 'smoke-like' } }],
    ['another state', { state: 'fire' }],
    ['other words', { words: 'Level 9 % at most, 07:19 on 2027-03-01.' }],
    ['another time of day', { words: 'Level 9 %, 07:20 on 2027-03-01.' }],
    ['another date', { words: 'Level 9 %, 07:19 on 2027-03-02.' }],
  ])('%s stands by itself, and parts the rows about it', (_, more) => {
    const like = (at: number): EventTold => event(at, 'Level 9 %, 07:19 on 2027-03-01.');
    const runs = eventRuns([like(0), like(1), like(2), { ...like(3), ...more }, like(4), like(5), like(6)]);
    expect(runs.map(({ events }) => events.length)).toEqual([3, 1, 3]);
  });
  it('no list, no rows', () => expect(eventRuns([])).toEqual([]));
});
