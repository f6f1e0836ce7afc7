import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { logHead } from './head.js';

const head = (text: string, whole = true) => logHead('a.csv', strToU8(text), whole, 200);

describe('logHead', () => {
  it('names, separator, and where the lines begin', () => {
    expect(head('\ufeff"time" ; b1;\n1;2;\n')).toMatchObject({
      names: ['time', 'b1'],
      separator: ';',
      headerLine: 1,
      lines: [['1', '2']],
    });
    expect(head('\n\r\ntime,b1\n1,2\n')).toMatchObject({ headerLine: 3, dataFrom: 11 });
  });
  it('the separator is the one that divides the lines as it divides the header', () => {
    expect(head('time;level, north;level, south\n1;2,5;3,5\n').names).toEqual(['time', 'level, north', 'level, south']);
    expect(head('time\tb1\n1\t2,5\n').separator).toBe('\t');
  });
  it('a line that is cut off by the end of the beginning does not count', () => {
    expect(head('time,b1\n1,2\n3,4', false).lines).toEqual([['1', '2']]);
    expect(head('time,b1\n1,2\n3,4', true).lines).toHaveLength(2);
  });
  it('says what is wrong with the first line that is of no use', () =>
    expect(head('time,b1\n1\n2,3\n')).toMatchObject({
      lines: [['2', '3']],
      firstTrouble: '1 cell where the header has 2: "1"',
    }));
});
