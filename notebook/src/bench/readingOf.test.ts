import type { BeamDiagnosisJson } from 'beamkeep';
import { parseSite } from 'beamkeep';
import { describe, expect, it } from 'vitest';
import { readingOf } from './readingOf.js';
import { testTrace } from './testTrace.js';

const site = parseSite({
  beams: ['a', 'b'].map((id) => ({ id, layout: 'reflective', separation: 50, signalColumn: id })),
});
const finding = (start: string): BeamDiagnosisJson['findings'][number] => ({
  cause: 'obstruction',
  start,
  end: start,
  ongoing: false,
  confidence: 0.9,
  severity: 'watch',
  summary: '',
  evidence: [],
  action: '',
  settles: '',
  episodes: [[start, start]],
});
const beam = (id: string, from: string | null, starts: readonly string[]): BeamDiagnosisJson => ({
  id,
  from,
  to: from,
  samples: from === null ? 0 : 1,
  findings: starts.map(finding),
  forecast: null,
  assumed: [],
});

describe('readingOf', () => {
  const reading = readingOf({
    names: ['x.csv'],
    bytes: 10,
    site,
    diagnosis: {
      format: 'beamkeep-diagnosis/1',
      beams: [beam('a', '2027-01-04T00:00:00Z', ['2027-01-06T00:00:00Z', '2027-01-05T00:00:00Z']), beam('b', null, [])],
      input: { lines: 2, dropped: 0, notes: [] },
    },
    records: [
      { id: 'a', trace: testTrace([0, 1], [0.25, 1]), intervalSeconds: 60, quantum: 0, assumed: [] },
      { id: 'b', trace: testTrace([], []), intervalSeconds: Number.NaN, quantum: 0, assumed: [] },
    ],
    reduced: false,
    seconds: 1,
  });

  it('numbers the findings in order of time, through all beams', () => {
    expect(reading.beams[0]?.findings.map(({ number, start }) => [number, start])).toEqual([
      [1, Date.UTC(2027, 0, 5)],
      [2, Date.UTC(2027, 0, 6)],
    ]);
    expect(reading.beams[0]?.findings[0]?.episodes).toEqual([[Date.UTC(2027, 0, 5), Date.UTC(2027, 0, 5)]]);
  });

  it('a beam without samples leaves the extent of the log alone', () => {
    expect(reading.from).toBe(Date.UTC(2027, 0, 4));
    expect(reading.beams[1]?.from).toBeNaN();
    expect(reading.beams[1]?.low).toBeNaN();
    expect(reading.beams[0]).toMatchObject({ low: 0.25, high: 1 });
  });
});
