import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { plainFile, workbookCell } from './workbook.js';

describe('workbookCell', () => {
  it('dates are clock times without a zone', () => {
    expect(workbookCell(new Date(Date.UTC(2027, 0, 4, 8, 30)))).toBe('2027-01-04 08:30:00.000');
  });

  it('empty stays empty, and CSV marks are quoted', () => {
    expect(workbookCell(null)).toBe('');
    expect(workbookCell(0)).toBe('0');
    expect(workbookCell('a, "b"')).toBe('"a, ""b"""');
  });
});

describe('plainFile', () => {
  it('leaves a text alone', async () => {
    const file = { name: 'a.csv', blob: new Blob(['time,b1\n']) };
    expect(await plainFile(file)).toBe(file);
  });

  it('refuses a zip that is no workbook in words', async () => {
    const zip = zipSync({ 'readme.txt': strToU8('nothing') });
    await expect(plainFile({ name: 'a.xlsx', blob: new Blob([zip as Uint8Array<ArrayBuffer>]) })).rejects.toThrow(
      /a\.xlsx: .*not a workbook/,
    );
  });
});
