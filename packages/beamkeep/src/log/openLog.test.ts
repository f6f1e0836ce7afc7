import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { parseSite } from '../site/index.js';
import { type LogSource, logOfText } from './logSource.js';
import { openLog } from './openLog.js';

const site = parseSite({ format: 'beamkeep-site/1', beams: [{ id: 'B1', layout: 'reflective', separation: 50 }] });
const open = (source: LogSource, many = false) => openLog(source, site, (bytes) => bytes, many);

async function textOf(bytes: AsyncIterable<Uint8Array>): Promise<string> {
  let text = '';
  for await (const chunk of bytes) text += String.fromCharCode(...chunk);
  return text;
}

describe('openLog', () => {
  it('gives what stands behind the header', async () => {
    const log = await open(logOfText('\ufeff\ntime,b1\n2027-01-04,5\n'));
    expect([log.head.headerLine, log.head.names]).toEqual([2, ['time', 'b1']]);
    expect(await textOf(log.data())).toBe('2027-01-04,5\n');
  });
  it('one of many that can be read anew is closed in the meantime', async () => {
    let opened = 0;
    let closed = 0;
    const bytes = {
      async *[Symbol.asyncIterator]() {
        opened++;
        try {
          yield strToU8('time,b1\n');
          yield strToU8('2027-01-04,5\n');
        } finally {
          closed++;
        }
      },
    };
    const log = await open({ name: 'a.csv', bytes, restarts: true }, true);
    expect([opened, closed]).toEqual([1, 1]);
    expect(await textOf(log.data())).toBe('2027-01-04,5\n');
    expect([opened, closed]).toEqual([2, 2]);
  });
  it('carriage returns alone are line ends', async () =>
    expect(await textOf((await open(logOfText('time,b1\r2027-01-04,5\r'))).data())).toBe('2027-01-04,5\n'));
});
