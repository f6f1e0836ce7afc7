import { gzipSync, strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { head, peeked } from './peek.js';

describe('head', () => {
  it('splits by the separator that the header has', () => {
    expect(head('time;b1;b2\n1;2,5;3\n')).toEqual({ columns: ['time', 'b1', 'b2'], rows: [['1', '2,5', '3']] });
    expect(head('time\tb1\r\n1\t2\r\n').rows).toEqual([['1', '2']]);
    expect(head('"time","b ""1"""\n').columns).toEqual(['time', 'b "1"']);
  });

  it('an empty text has one nameless column', () => {
    expect(head('')).toEqual({ columns: [''], rows: [] });
  });
});

describe('peeked', () => {
  const text = `time,b1\n${'2027-01-04T00:00:00Z,99.5\n'.repeat(5000)}`;

  it('looks into a gzipped log', async () => {
    const zipped = gzipSync(strToU8(text));
    const { columns, rows } = await peeked(new Blob([zipped as Uint8Array<ArrayBuffer>]));
    expect(columns).toEqual(['time', 'b1']);
    expect(rows.length).toBe(6);
  });

  it('and into a plain one', async () => {
    expect((await peeked(new Blob([text]))).rows[0]).toEqual(['2027-01-04T00:00:00Z', '99.5']);
  });
});
