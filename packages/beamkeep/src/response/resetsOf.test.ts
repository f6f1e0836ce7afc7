import { describe, expect, it } from 'vitest';
import { parseSite } from '../site/index.js';
import { resetsOf } from './resetsOf.js';

describe('resetsOf', () => {
  it('takes resets of the beam and of all, at their start and end, in order', () => {
    const { visits } = parseSite({
      beams: ['B1', 'B2'].map((id) => ({ id, layout: 'reflective', separation: 62 })),
      visits: [
        { time: '2027-03-02T12:00Z', work: 'reset' },
        { time: '2027-03-02T09:00Z', until: '2027-03-02T10:00Z', beam: 'B1', work: 'reset' },
        { time: '2027-03-02T09:30Z', beam: 'B2', work: 'reset' },
        { time: '2027-03-02T09:30Z', beam: 'B1', work: 'cleaned' },
      ],
    });
    expect(resetsOf(visits, 'B1').map((time) => new Date(time).toISOString().slice(11, 16))).toEqual([
      '09:00',
      '10:00',
      '12:00',
    ]);
  });
});
