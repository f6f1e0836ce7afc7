import { describe, expect, it } from 'vitest';
import { fires } from './fires.js';

const told = [
  {
    id: 'B3',
    stretches: [
      { state: 'fire', start: 10, end: 90 },
      { state: 'fault', start: 12, end: 13 },
      { state: 'fire', start: 100, end: 101 },
    ],
    notes: [],
  },
] as const;

describe('fires', () => {
  it('are those that begin within a stretch', () =>
    expect(fires(told, 'B3', [{ start: 5, end: 20 }])).toEqual([{ state: 'fire', start: 10, end: 90 }]));
  it('are none of another beam, and none before they are worked out', () => {
    expect(fires(told, 'B1', [{ start: 5, end: 20 }])).toEqual([]);
    expect(fires(null, 'B3', [{ start: 5, end: 20 }])).toEqual([]);
  });
});
