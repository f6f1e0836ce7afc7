import type { FindingJson } from 'beamkeep';
import { describe, expect, it } from 'vitest';
import { ordered, reaches } from './ordered.js';

const finding = (told: Pick<FindingJson, 'cause' | 'severity' | 'confidence' | 'start'>): FindingJson => ({
  end: told.start,
  ongoing: false,
  summary: '',
  evidence: [],
  action: '',
  settles: '',
  ...told,
});

describe('ordered', () => {
  it('goes by severity, smoke first, statements before possibilities, then by time', () => {
    const all = [
      finding({ cause: 'cleaned', severity: 'note', confidence: 0.9, start: '2027-01-01T00:00:00.000Z' }),
      finding({ cause: 'vibration', severity: 'watch', confidence: 0.4, start: '2027-01-01T00:00:00.000Z' }),
      finding({ cause: 'contamination', severity: 'watch', confidence: 0.9, start: '2027-01-03T00:00:00.000Z' }),
      finding({ cause: 'obstruction', severity: 'watch', confidence: 0.9, start: '2027-01-02T00:00:00.000Z' }),
      finding({ cause: 'smoke-like', severity: 'watch', confidence: 0.1, start: '2027-01-05T00:00:00.000Z' }),
      finding({ cause: 'misalignment-step', severity: 'act', confidence: 0.6, start: '2027-01-06T00:00:00.000Z' }),
    ];
    expect(ordered(all).map(({ cause }) => cause)).toEqual([
      'misalignment-step',
      'smoke-like',
      'obstruction',
      'contamination',
      'vibration',
      'cleaned',
    ]);
  });
});

describe('reaches', () => {
  it('is at or above', () => {
    expect(reaches('act', 'watch')).toBe(true);
    expect(reaches('watch', 'watch')).toBe(true);
    expect(reaches('note', 'watch')).toBe(false);
  });
});
