import { describe, expect, it } from 'vitest';
import { diagnosed, recordOf, siteOf } from '../../../../tests/diagnosis/kit.js';
import { typical } from '../../../../tests/diagnosis/typical.js';
import { diagnoseBeams } from './diagnoseBeams.js';

describe('diagnoseBeams', () => {
  it('tells findings in order of their start, and the usable samples', () => {
    const diagnosis = diagnosed(typical.cleaned());
    expect(diagnosis.samples).toBe(30 * 288);
    const starts = diagnosis.findings.map(({ start }) => start);
    expect(starts).toEqual([...starts].sort((a, b) => a - b));
  });
  it('finds nothing in a record without a sample', () =>
    expect(diagnosed(recordOf(() => Number.NaN, { days: 1 }))).toMatchObject({
      samples: 0,
      findings: [],
      picture: undefined,
    }));
  it.each([1, 2, 5, 30])('bears a record of %i samples', (rows) =>
    expect(diagnosed(recordOf(() => 1, { days: rows / 288 })).samples).toBe(rows),
  );
  it('refuses a record of no beam of the site', () =>
    expect(() => diagnoseBeams([{ ...typical.cleaned(), id: 'B9' }], siteOf())).toThrow('B9'));
  it('says nothing below a tenth, but smoke at any confidence', () => {
    for (const { cause, confidence } of diagnosed(typical.obstruction()).findings)
      expect(confidence >= 0.1 || cause === 'smoke-like').toBe(true);
  });
});
