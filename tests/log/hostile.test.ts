import { UsageError } from 'beamkeep';
import { type LogSource, logOfText, readTraces } from 'beamkeep/log';
import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { inChunks, rowsOf, siteOf } from './rowsOf.js';

const t = '2027-01-04T00:00:00Z';

/** The one line with which a log is refused. */
async function refusal(source: LogSource | string, site = siteOf(['b1'])): Promise<string> {
  try {
    await rowsOf(typeof source === 'string' ? logOfText(source) : source, site);
  } catch (error) {
    expect(error).toBeInstanceOf(UsageError);
    const { message } = error as UsageError;
    expect(message).not.toMatch(/[\p{Cc}\p{Cf}]/u);
    return message;
  }
  throw new Error('not refused');
}

/** So many bytes of one value. */
async function* endless(byte: number, mebibytes: number): AsyncGenerator<Uint8Array> {
  const block = new Uint8Array(1 << 20).fill(byte);
  for (let at = 0; at < mebibytes; at++) yield block;
}

describe('logs that cannot be used are refused in one line', () => {
  it.each([
    ['empty', '', 'log.csv: the file is empty'],
    ['nothing but line ends', '\n\r\n\n', 'log.csv: the file is empty'],
    ['a header and no line', 'time,b1\n', 'log.csv:2: the log ends after its header: there is no line of data'],
    [
      'no such column',
      `time,b2,level\n${t},1,2\n`,
      'log.csv:1: beams[0] signalColumn: no column "b1": is it "b2"? (there are "time", "b2", "level")',
    ],
    [
      'no header',
      `${t},1\n${t},2\n`,
      `log.csv:1: beams[0] signalColumn: no column "b1": is it "1"? (there are "${t}", "1"); the first line is no header but data: write one above it`,
    ],
    [
      'one column',
      'time\n5\n',
      'log.csv:1: no column beside time ("time"): a log has time and at least one beam, separated by "," or ";" or tab',
    ],
    [
      'two columns of one name',
      `time,b1,b1\n${t},1,2\n`,
      'log.csv:1: beams[0] signalColumn: two columns are named "b1": name them apart',
    ],
    ['every value missing', `time,b1\n${t},\n`, 'log.csv:2: every value of "b1" is missing'],
    [
      'times that are none',
      'id,b1\nx7,1\n',
      'log.csv:2: "x7" in column "id" is not a time in a known format: set "timeColumn" or "timeFormat" in the site file',
    ],
    [
      'day or month',
      'time,b1\n03/04/2027 10:00,1\n',
      'log.csv:2: "03/04/2027 10:00" in column "time" can be day first or month first: set "timeFormat" to "day-first" or "month-first" in the site file',
    ],
    [
      'time in two columns',
      'date,clock,b1\n2027-01-04,10:00,1\n',
      'log.csv:2: the time stands in two columns: set "timeColumn" to ["date", "clock"] in the site file',
    ],
    [
      'decimal commas between commas',
      `time,b1\n${t},35,2\n`,
      `log.csv:2: 3 cells where the header has 2 (if the decimal is a comma, separate cells with ";"): "${t},35,2"`,
    ],
    ['a quote left open in the header', '"time,b1\n', 'log.csv:1: a quote is left open in the header ("\\"time,b1")'],
    [
      'a name that steers a terminal',
      `time,\u001b]0;x\u0007\n${t},1\n`,
      'log.csv:1: beams[0] signalColumn: no column "b1" (there are "time", "\\u001b]0;x\\u0007")',
    ],
  ])('%s', async (_, text, message) => expect(await refusal(text)).toBe(message));

  it('a column named like the insides of objects, and not there', async () => {
    for (const name of ['__proto__', 'constructor', 'toString', 'hasOwnProperty']) {
      expect(await refusal(`time,b1\n${t},1\n`, siteOf([name]))).toContain(`no column "${name}"`);
    }
  });

  it('a format that the times do not have', async () => {
    expect(await refusal(`time,b1\n${t},1\n`, siteOf(['b1'], { timeFormat: 'day-first' }))).toBe(
      `log.csv:2: no line gives a sample; line 2: not a time: "${t}"; timeFormat is "day-first"`,
    );
  });

  it('a time column that is not there, or is a beam', async () => {
    expect(await refusal(`time,b1\n${t},1\n`, siteOf(['b1'], { timeColumn: 'tine' }))).toBe(
      'log.csv:1: timeColumn: no column "tine": is it "time"? (there are "time", "b1")',
    );
    expect(await refusal(`b1,x\n${t},1\n`)).toBe('log.csv:1: beams[0] signalColumn: "b1" is the column of time');
  });

  it('readings of the long form that bear other names', async () => {
    expect(await refusal(`time,name,value\n${t},north,1\n${t},south,2\n`)).toBe(
      'log.csv:2: no line gives a sample; the log has readings of "north", "south"',
    );
  });

  it('binary data', async () => {
    const random = Uint8Array.from({ length: 5000 }, (_, at) => (at * at * 31) % 256);
    expect(await refusal({ name: 'x.bin', bytes: inChunks(random, [700]) })).toContain('not text but binary data');
    const sheet = { name: 'x.xlsx', bytes: inChunks(Uint8Array.of(0x50, 0x4b, 3, 4, 0, 0), [6]) };
    expect(await refusal(sheet)).toBe('x.xlsx: this is a zip archive or a spreadsheet: save it as CSV');
    const wide = { name: 'x.txt', bytes: inChunks(Uint8Array.of(0xff, 0xfe, 0x74, 0), [1]) };
    expect(await refusal(wide)).toBe('x.txt: this is UTF-16 text: save it as UTF-8');
  });

  it('one line of 80 MB, of which a mebibyte is held', async () => {
    const message = 'long.csv:1: a line longer than 1 MiB: this is no log, or its line ends are missing';
    expect(await refusal({ name: 'long.csv', bytes: endless(49, 80) })).toBe(message);
    async function* later() {
      yield strToU8(`time,b1\n${`${t},1\n`.repeat(20_000)}`);
      yield* endless(49, 80);
    }
    expect(await refusal({ name: 'long.csv', bytes: later() })).toBe(message.replace(':1:', ':20002:'));
  });

  it.each(['', 'time,b1\n', 'time,b2,b3\n', '1'.repeat(3 << 20)])('a refused log is let go of (%#)', async (text) => {
    let open = 0;
    async function* bytes() {
      open++;
      try {
        yield strToU8(text);
        yield strToU8('');
      } finally {
        open--;
      }
    }
    await refusal({ name: 'log.csv', bytes: bytes() });
    expect(open).toBe(0);
  });

  it('a name of a file that steers a terminal', async () =>
    expect(await refusal(logOfText('', 'a\u001b[2J.csv'))).toBe('a\\u{1b}[2J.csv: the file is empty'));

  it('a header of thousands of columns is read; a message names a dozen', async () => {
    const names = Array.from({ length: 20_000 }, (_, at) => `c${at}`).join(',');
    const message = await refusal(`time,${names}\n${t},${'1,'.repeat(19_999)}1\n`);
    expect(message.length).toBeLessThan(300);
    expect(message).toContain('and 19989 more');
  });
});

describe('logs that go on for ever are held in bounds', () => {
  it('a million empty lines are counted and told in one note', async () => {
    async function* bytes() {
      yield strToU8(`time,b1\n${t},1\n`);
      yield* endless(10, 1);
    }
    const { input, time } = await rowsOf({ name: 'a.csv', bytes: bytes() }, siteOf(['b1']));
    expect(time).toHaveLength(1);
    expect(input).toMatchObject({ lines: 2 + 2 ** 20, dropped: 2 ** 20 });
    expect(input.notes).toHaveLength(2);
  });

  it('a hundred thousand lines, each broken in another way, are told in few notes', async () => {
    const lines = Array.from({ length: 20_000 }, (_, at) => `${t},x${at}\nq${at},1\n${t}${',9'.repeat(2 + (at % 40))}`);
    const { input } = await rowsOf(logOfText(`time,b1\n${t},5\n${lines.join('\n')}\n`), siteOf(['b1']));
    expect(input.notes.length).toBeLessThan(40);
    expect(input.lines).toBe(60_002);
  });

  it('cancelling ends with an error of that name', async () => {
    const signal = { aborted: false };
    async function* bytes() {
      yield strToU8(`time,b1\n${t},1\n`);
      for (;;) {
        signal.aborted = true;
        yield strToU8(`${t},1\n`.repeat(50_000));
      }
    }
    await expect(readTraces({ name: 'a.csv', bytes: bytes() }, siteOf(['b1']), { signal })).rejects.toMatchObject({
      name: 'AbortError',
    });
  });

  it('progress is told in bytes as they are stored', async () => {
    const told: number[] = [];
    const text = `time,b1\n${`${t},1\n`.repeat(100)}`;
    await readTraces({ name: 'a.csv', bytes: inChunks(strToU8(text), [500]) }, siteOf(['b1']), {
      onProgress: (bytes) => told.push(bytes),
    });
    expect(told.at(-1)).toBe(text.length);
    expect(told).toEqual(told.toSorted((a, b) => a - b));
  });
});
