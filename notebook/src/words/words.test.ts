import { causeWords } from 'beamkeep/diagnosis';
import { describe, expect, it } from 'vitest';
import { causeHeading, causeOnBar, doubleHeading, withHeadings } from './causes.js';
import { confidenceInWords } from './confidence.js';
import { dateInWords, siteDates, withDates } from './dates.js';
import { bytesInWords, figure, lengthInWords, measured, percent } from './numbers.js';
import { typeset } from './typeset.js';

describe('words', () => {
  it('every cause has a heading and a name for its bar', () => {
    for (const cause of causeWords) expect(causeHeading(cause) && causeOnBar(cause)).toBeTruthy();
  });

  it('causes stand by their headings in sentences and as what they are taken for', () => {
    expect(withHeadings('Nearest, 50 s away: smoke-like (47 %): it grew as smoke-like loss; dust (3 %).')).toBe(
      'Nearest, 50 s away: Cannot be told from smoke (47 %): it grew as smoke-like loss; dust (3 %).',
    );
    expect([doubleHeading('cleaned'), doubleHeading('renormalised')]).toEqual([
      'Loss removed by work',
      'The equipment set its reading anew',
    ]);
  });

  it('a sentence of the library stands in the marks of print; dates and compounds keep their hyphens, numbers their units', () =>
    expect(typeset('The logger\'s "b1" reads -3 % (-0.5 dB), end-to-end, for 3 days since 2027-01-09, 2 dBm.')).toBe(
      'The logger’s “b1” reads −3\u00a0% (−0.5\u00a0dB), end-to-end, for 3\u00a0days since 2027-01-09, 2 dBm.',
    ));

  it('the dates of a sentence are written as the reader writes them, clocks and figures left', () => {
    const written = siteDates('UTC').date(Date.UTC(2027, 4, 4));
    expect(dateInWords('2027-05-04')).toBe(written);
    expect(withDates('It begins on Tuesday 2027-05-04 06:22 (12-05-04, 2027-05-041): 1.5 %.')).toBe(
      `It begins on Tuesday ${written} 06:22 (12-05-04, 2027-05-041): 1.5 %.`,
    );
  });

  it('from one half it is a statement; what looks like smoke always is', () => {
    expect(confidenceInWords({ cause: 'contamination', confidence: 0.5 })).toBe('more likely than not');
    expect(confidenceInWords({ cause: 'contamination', confidence: 0.49 })).toBe('a possibility');
    expect(confidenceInWords({ cause: 'smoke-like', confidence: 0.2 })).toMatch(/treated as smoke/);
  });

  it('many seconds are told as minutes, hours or days, all else as it is measured', () => {
    expect([85_740, 1200, 60].map((seconds) => measured(seconds, 's').join(' '))).toEqual(['24 h', '20 min', '60 s']);
    expect([measured(420, 'mm'), measured(41, ''), measured(Number.POSITIVE_INFINITY, 's')]).toEqual([
      ['420', 'mm'],
      ['41', ''],
      ['without end', 's'],
    ]);
    expect(measured(Number.NaN, 's')).toEqual(['none', 's']);
  });

  it('numbers keep the digits that matter, in the way of the reader', () => {
    expect(figure(0.012345)).toMatch(/^0[.,]0123$/);
    expect(figure(123456)).toMatch(/^123\D?456$/);
    expect(figure(-2)).toBe('−2');
    expect(figure(Number.POSITIVE_INFINITY)).toBe('without end');
    expect(percent(0.934)).toBe('93 %');
    expect(bytesInWords(2_900_000)).toMatch(/^2[.,]9 MB$/);
    const lengths = [45_000, 20 * 60_000, 3.5 * 3_600_000, 12 * 86_400_000].map(lengthInWords);
    expect(lengths.map((length) => length.replace(',', '.'))).toEqual(['45 s', '20 min', '3.5 h', '12 days']);
  });

  it('times stand on the clock of the site', () => {
    const dates = siteDates('Asia/Kathmandu');
    const start = Date.UTC(2027, 0, 4, 20);
    expect(dates.moment(start)).toMatch(/5.*01:45|01:45/);
    expect(dates.stretch(start, start)).toBe(dates.moment(start));
    expect(dates.stretch(start, start + 3_600_000)).toMatch(/to 02:45$/);
    expect(dates.moment(Number.NaN)).toBe('never');
    expect(dates.date(start)).not.toContain(' ');
  });
});
