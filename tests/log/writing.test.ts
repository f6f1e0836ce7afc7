import { logOfText } from 'beamkeep/log';
import { describe, expect, it } from 'vitest';
import { rowsOf, siteOf } from './rowsOf.js';

/** How a log may be written: the same four samples, in every way that the format knows. */
const expected = [99.5, 35.25, Number.NaN, -4];
const start = Date.UTC(2027, 0, 13, 6, 40);

async function read(text: string, site: object = {}, signals: readonly (string | undefined)[] = ['b1']) {
  return rowsOf(logOfText(text), siteOf(signals, site));
}

describe('ways of writing a log', () => {
  it.each([
    [
      'commas',
      'time,b1\n2027-01-13T06:40:00Z,99.5\n2027-01-13T06:41:00Z,35.25\n2027-01-13T06:42:00Z,\n2027-01-13T06:43:00Z,-4\n',
    ],
    [
      'semicolons, decimal commas, percent signs',
      'time;b1\n2027-01-13T06:40:00Z;99,5 %\n2027-01-13T06:41:00Z;35,25%\n2027-01-13T06:42:00Z;NA\n2027-01-13T06:43:00Z;-4 %\n',
    ],
    [
      'tabs, line ends of another system, no last one',
      'time\tb1\r\n2027-01-13T06:40:00Z\t99.5\r\n2027-01-13T06:41:00Z\t35.25\r\n2027-01-13T06:42:00Z\tNaN\r\n2027-01-13T06:43:00Z\t-4',
    ],
    [
      'carriage returns alone',
      'time,b1\r2027-01-13T06:40:00Z,99.5\r2027-01-13T06:41:00Z,35.25\r2027-01-13T06:42:00Z,null\r2027-01-13T06:43:00Z,-4\r',
    ],
    [
      'quotes and a byte-order mark',
      '\ufeff"time","b1"\n"2027-01-13T06:40:00Z","99.5"\n"2027-01-13T06:41:00Z","35.25"\n"2027-01-13T06:42:00Z",""\n"2027-01-13T06:43:00Z","-4"\n',
    ],
    [
      'other columns, in any order',
      'remark,b1,time,door\nok,99.5,2027-01-13T06:40:00Z,0\n"a, b",35.25,2027-01-13T06:41:00Z,1\n,,2027-01-13T06:42:00Z,0\n,-4,2027-01-13T06:43:00Z,0\n',
      { timeColumn: 'time' },
    ],
    [
      'blanks around cells, separators at the end',
      'time, b1 ,\n2027-01-13T06:40:00Z, 99.5 ,\n2027-01-13T06:41:00Z,35.25,\n2027-01-13T06:42:00Z, ,\n2027-01-13T06:43:00Z, -4,\n',
    ],
    [
      'Unix seconds',
      `time,b1\n${start / 1000},99.5\n${start / 1000 + 60},35.25\n${start / 1000 + 120}.000,\n${start / 1000 + 180},-4\n`,
    ],
    [
      'Unix milliseconds',
      `time,b1\n${start},99.5\n${start + 60_000},35.25\n${start + 120_000},\n${start + 180_000},-4\n`,
    ],
    ['day first', 'time;b1\n13.01.2027 06:40;99,5\n13.01.2027 06:41;35,25\n13.01.2027 06:42;\n13.01.2027 06:43;-4\n'],
    [
      'month first, by the site',
      'time,b1\n1/13/2027 6:40:00 AM,99.5\n1/13/2027 6:41:00 AM,35.25\n1/13/2027 6:42:00 AM,\n1/13/2027 6:43:00 AM,-4\n',
      { timeFormat: 'month-first' },
    ],
    [
      'date and time in two columns',
      'date,clock,b1\n2027-01-13,06:40,99.5\n2027-01-13,06:41,35.25\n2027-01-13,06:42,\n2027-01-13,06:43,-4\n',
      { timeColumn: ['date', 'clock'] },
    ],
    [
      'local clocks',
      'time,b1\n2027-01-13 00:40,99.5\n2027-01-13 00:41,35.25\n2027-01-13 00:42,\n2027-01-13 00:43,-4\n',
      { timeZone: 'America/Chicago' },
    ],
    [
      'one reading a line',
      'time,name,value\n2027-01-13T06:40:00Z,b1,99.5\n2027-01-13T06:41:00Z,b1,35.25\n2027-01-13T06:42:00Z,b1,\n2027-01-13T06:43:00Z,b1,-4\n',
    ],
  ] as const)('%s', async (_, text, site?: object) => {
    const { time, columns } = await read(text, site);
    expect(time).toEqual([0, 1, 2, 3].map((minute) => start + minute * 60_000));
    expect(columns).toEqual([expected]);
  });

  it('a number that is none is missing, and told by its line', async () => {
    const { columns, input } = await read(
      'time,b1\n2027-01-13T06:40:00Z,abc\n2027-01-13T06:41:00Z,1e309\n2027-01-13T06:42:00Z,5\n',
    );
    expect(columns).toEqual([[Number.NaN, Number.NaN, 5]]);
    expect(input).toMatchObject({ lines: 4, dropped: 0 });
    expect(input.notes.slice(1)).toEqual([
      { line: 2, lines: 1, what: 'not a number: "abc"' },
      { line: 3, lines: 1, what: 'not a number: "1e309"' },
    ]);
  });

  it('lines that are broken are dropped, and told by line', async () => {
    const text = 'time,b1\n2027-01-13T06:40:00Z,1\n2027-\n\n---\n,\n2027-01-13T06:41:00Z,2\n2027-01-13T06:42:00Z,1,2\n';
    const { columns, input } = await read(text);
    expect(columns).toEqual([[1, 2]]);
    expect(input.lines).toBe(8);
    expect(input.dropped).toBe(5);
    expect(input.notes.slice(1)).toEqual([
      { line: 3, lines: 1, what: '1 cell where the header has 2: "2027-"' },
      { line: 4, lines: 1, what: 'empty line' },
      { line: 5, lines: 1, what: '1 cell where the header has 2: "---"' },
      { line: 6, lines: 1, what: 'not a time: ""' },
      {
        line: 8,
        lines: 1,
        what: '3 cells where the header has 2 (if the decimal is a comma, separate cells with ";"): "2027-01-13T06:42:00Z,1,2"',
      },
    ]);
  });

  it('columns named like the insides of objects are columns', async () => {
    const { names, columns } = await read('time,__proto__,constructor\n2027-01-13T06:40:00Z,1,2\n', {}, [
      '__proto__',
      'constructor',
    ]);
    expect([names, columns]).toEqual([
      ['__proto__', 'constructor'],
      [[1], [2]],
    ]);
  });

  it('what time was taken for is told, unless the site says it', async () => {
    const text = 'time,b1\n2027-01-13 00:40,99.5\n';
    expect((await read(text, { timeZone: 'Europe/Lisbon' })).input.notes).toEqual([
      { line: 2, lines: 1, what: 'times were taken for ISO 8601 without an offset, on clocks of Europe/Lisbon' },
    ]);
    expect((await read(text, { timeZone: 'Europe/Lisbon', timeFormat: 'iso' })).input.notes).toEqual([]);
  });

  it('a day that tells day from month may come later', async () => {
    const lines = Array.from({ length: 3000 }, (_, at) => {
      const date = new Date(Date.UTC(2027, 2, 1) + at * 600_000);
      return `${date.getUTCDate()}/${date.getUTCMonth() + 1}/2027 ${date.toISOString().slice(11, 16)},${at}`;
    });
    const { time } = await read(`time,b1\n${lines.join('\n')}\n`);
    expect(time[2999]).toBe(Date.UTC(2027, 2, 1) + 2999 * 600_000);
  });
});

describe('the only other column', () => {
  const one = [undefined];
  it('is the beam', async () => {
    expect((await read('time,level\n2027-01-13T06:40:00Z,1\n', {}, one)).names).toEqual(['level']);
  });
  it('columns with another use do not count', async () => {
    const site = siteOf(one, {}, { temperatureColumn: 't' });
    const { names } = await rowsOf(logOfText('time,t,level\n2027-01-13T06:40:00Z,20,1\n'), site);
    expect(names).toEqual(['level', 't']);
  });
  it('a column of words does not count, and that is told', async () => {
    const { names, input } = await read(
      'time,level,state\n2027-01-13T06:40:00Z,1,ok\n2027-01-13T06:41:00Z,1,\n',
      {},
      one,
    );
    expect(names).toEqual(['level']);
    expect(input.notes[0]?.what).toBe('the beam is the only column with numbers: "level"');
  });
  it('of two nothing is guessed', async () => {
    await expect(read('time,level,doors\n2027-01-13T06:40:00Z,1,0\n', {}, one)).rejects.toThrow(
      'log.csv:1: beams[0] signalColumn is left out, and the log has several columns beside time ("level", "doors"): say in the site file which one is the beam',
    );
  });
  it('in the long form it is the only name', async () => {
    expect((await read('time,name,value\n2027-01-13T06:40:00Z,level,1\n', {}, one)).names).toEqual(['level']);
    const other = `${'2027-01-13T06:40:00Z,level,1\n'.repeat(300)}2027-01-13T06:41:00Z,late,1\n`;
    await expect(read(`time,name,value\n${other}`, {}, one)).rejects.toThrow(
      'log.csv:302: beams[0] signalColumn is left out, and the log has readings of "level" and of "late"',
    );
  });
});
