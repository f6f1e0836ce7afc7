import { describe, expect, it } from 'vitest';
import type { BeamReading, NumberedFinding } from '../../bench/reading.js';
import { verdictKey } from '../findings/verdictKey.js';
import { findingsOut } from './findingsOut.js';

const finding = (number: number, severity: NumberedFinding['severity']): NumberedFinding => ({
  number,
  beam: 'B1',
  cause: 'obstruction',
  severity,
  confidence: 0.9,
  start: Date.UTC(2027, 1, number),
  end: Date.UTC(2027, 1, number, 1),
  ongoing: false,
  summary: 'Something stood in the path.',
  evidence: [],
  action: '',
  settles: '',
});
const findings = [finding(1, 'note'), finding(2, 'watch'), finding(3, 'act')];
const beams = [{ id: 'B1', findings }] as unknown as BeamReading[];

describe('findingsOut', () => {
  it('keeps what was judged and what asks for someone to go', () => {
    const [first] = findings;
    const verdicts = first
      ? { [verdictKey(first)]: { verdict: 'relabelled', cause: 'cleaned', note: 'a lift' } as const }
      : {};
    expect(findingsOut({ beams }, verdicts).map(({ start, onSite }) => [start.slice(0, 10), onSite])).toEqual([
      ['2027-02-01', { verdict: 'relabelled', cause: 'cleaned', note: 'a lift' }],
      ['2027-02-03', null],
    ]);
  });

  it('a name of the language is no verdict', () => {
    const odd = [{ id: 'B1', findings: [{ ...finding(1, 'note'), beam: '__proto__' }] }] as unknown as BeamReading[];
    expect(findingsOut({ beams: odd }, {})).toEqual([]);
  });
});
