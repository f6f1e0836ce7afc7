import { describe, expect, it } from 'vitest';
import { freshCell, type Sheet } from './sheet.js';
import { workAbove } from './workAbove.js';

describe('workAbove', () => {
  it('gathers what stands above and reads the same log, with the numbers of the page', () => {
    const record = freshCell('record');
    const sheet: Sheet = {
      title: '',
      cells: [
        freshCell('log'),
        freshCell('aim'),
        freshCell('log'),
        freshCell('note'),
        freshCell('findings'),
        freshCell('proof'),
        record,
        freshCell('covered'),
      ],
    };
    expect(workAbove(sheet, record.id).map(({ number, cell }) => [number, cell.kind])).toEqual([
      [5, 'findings'],
      [6, 'proof'],
    ]);
    expect(workAbove(sheet, 'nowhere')).toEqual([]);
  });
});
