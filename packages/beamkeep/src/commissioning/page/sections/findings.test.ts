import { describe, expect, it } from 'vitest';
import { gathered } from '../../../../../../tests/commissioning/answers.js';
import { cellsOf, textOf } from '../../../../../../tests/commissioning/readPage.js';
import type { FindingOut } from '../../record/commissioningRecord.js';
import { findingsSection } from './findings.js';

const finding: FindingOut = {
  beam: 'B1',
  cause: 'smoke-like',
  severity: 'act',
  confidence: 0.846,
  start: '2027-07-01T10:00:30Z',
  end: '2027-07-01T23:30:00Z',
  summary: 'It grew for ten minutes.',
  onSite: null,
};
const shown = (findings: readonly FindingOut[] | null) =>
  findingsSection(gathered(undefined, undefined, {}, { findings }))?.markup ?? '';
const onSite = (judged: FindingOut['onSite']) => cellsOf(shown([{ ...finding, onSite: judged }]))[0]?.[4];

describe('findingsSection', () => {
  it('tells a finding with its times by the clock of the site, to the minute, and how sure it is', () =>
    expect(cellsOf(shown([finding]))).toEqual([
      [
        'B1',
        '2027-07-01 11:00',
        '2027-07-02 00:30',
        'smoke-like, act, 85 %. It grew for ten minutes.',
        'nobody has looked yet',
      ],
    ]));
  it('tells what was found on site', () => {
    expect(onSite({ verdict: 'confirmed', cause: null, note: '' })).toBe('confirmed');
    expect(onSite({ verdict: 'rejected', cause: null, note: 'no trace of it' })).toBe(
      'rejected: it was not so. no trace of it',
    );
    expect(onSite({ verdict: 'relabelled', cause: 'dust', note: '' })).toBe('it was something else, namely dust');
  });
  it('a diagnosis without such a finding says so; no diagnosis has no section', () => {
    expect(textOf(shown([]))).toContain('Nobody has judged a finding, and none asks for someone to go.');
    expect(shown(null)).toBe('');
  });
});
