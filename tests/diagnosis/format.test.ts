import { describe, expect, it } from 'vitest';
import { diagnosisOf } from '../../packages/beamkeep/src/diagnose.js';
import { causes, causeWords, severities } from '../../packages/beamkeep/src/diagnosis/index.js';
import { siteOf } from './kit.js';
import { typical } from './typical.js';

const input = { lines: 1, dropped: 0, notes: [] };
const answers = causeWords.map((cause) => diagnosisOf([typical[cause]()], siteOf(), input));
const findings = answers.flatMap(({ beams }) => beams.flatMap((beam) => beam.findings));

describe('the answer', () => {
  it('names the thirteen causes of the format, each owned by one file', () => {
    expect([...causeWords]).toEqual([
      'contamination',
      'misalignment-step',
      'misalignment-drift',
      'building-movement',
      'obstruction',
      'condensation',
      'process-aerosol',
      'ambient-light',
      'vibration',
      'electrical-noise',
      'data-gap',
      'smoke-like',
      'cleaned',
    ]);
    expect(causes.map(({ word }) => word).sort()).toEqual([...causeWords].sort());
    expect([...severities]).toEqual(['note', 'watch', 'act']);
  });
  it('has the keys of the format, and survives JSON', () => {
    for (const answer of answers) {
      expect(Object.keys(answer)).toEqual(['format', 'beams', 'input']);
      expect(answer.format).toBe('beamkeep-diagnosis/1');
      expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
      for (const beam of answer.beams)
        expect(Object.keys(beam)).toEqual(['id', 'from', 'to', 'samples', 'findings', 'forecast', 'assumed']);
    }
  });
  it('each finding has the keys of the format, with values of their kind', () => {
    expect(findings.length).toBeGreaterThanOrEqual(causeWords.length);
    const keys = [
      'cause',
      'start',
      'end',
      'ongoing',
      'confidence',
      'severity',
      'summary',
      'evidence',
      'action',
      'settles',
    ];
    const instant = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/;
    for (const { episodes, during, ...finding } of findings) {
      expect(Object.keys(finding).sort()).toEqual([...keys].sort());
      expect(finding.start).toMatch(instant);
      expect(finding.end).toMatch(instant);
      expect(finding.confidence).toBeGreaterThanOrEqual(0);
      expect(finding.confidence).toBeLessThanOrEqual(1);
      expect(severities).toContain(finding.severity);
      for (const text of [finding.summary, finding.action, finding.settles]) expect(text).toMatch(/^\S.{15,}[.?]$/);
      expect(finding.evidence.length).toBeGreaterThan(0);
      for (const { measure, value, unit, ...rest } of finding.evidence) {
        expect([typeof measure, typeof unit, rest]).toEqual(['string', 'string', {}]);
        expect(Number.isFinite(value), `${finding.cause} ${measure}`).toBe(true);
      }
      for (const [from, to] of episodes ?? []) {
        expect(from).toMatch(instant);
        expect(from <= to && from >= finding.start && to <= finding.end).toBe(true);
      }
      expect(during).toBeUndefined();
    }
  });
  it('a forecast has the keys of the format, its dates in order', () => {
    const dirt = answers[causeWords.indexOf('contamination')]?.beams[0]?.forecast;
    expect(dirt).not.toBeNull();
    expect(Object.keys(dirt ?? {})).toEqual(['obscuration', 'ends', 'median', 'low', 'high']);
    expect((dirt?.low ?? '') <= (dirt?.median ?? '')).toBe(true);
    expect(answers[causeWords.indexOf('data-gap')]?.beams[0]?.forecast).toBeNull();
  });
  it('law: the same records give the same answer', () =>
    expect(diagnosisOf([typical['process-aerosol']()], siteOf(), input)).toEqual(
      answers[causeWords.indexOf('process-aerosol')],
    ));
});
