import { describe, expect, it } from 'vitest';
import { signalled } from './signalled.js';

const at = (minutes: number): string => new Date(minutes * 60_000).toISOString();

describe('signalled', () => {
  it('makes stretches of changes, the last one to the end of the log', () => {
    const changes = [
      { time: at(0), state: 'normal' as const },
      { time: at(10), state: 'fault' as const },
      { time: at(12), state: 'fire' as const },
      { time: at(20), state: 'normal' as const },
      { time: at(30), state: 'fault' as const },
    ];
    expect(signalled({ id: 'B1', changes, assumed: [] }, 40 * 60_000).stretches).toEqual([
      { state: 'fault', start: 600_000, end: 720_000 },
      { state: 'fire', start: 720_000, end: 1_200_000 },
      { state: 'fault', start: 1_800_000, end: 2_400_000 },
    ]);
  });

  it('a beam without samples signals nothing', () => {
    expect(signalled({ id: 'B1', changes: [], assumed: [] }, Number.NaN).stretches).toEqual([]);
  });
});
