import { describe, expect, it } from 'vitest';
import { workedOutFormat } from './workedOutFormat.js';

describe('workedOutFormat', () => {
  it.each([
    ['2027-01-08T06:40:00Z', 'iso', false],
    ['2027-01-08 06:40', 'iso', true],
    ['1799390400', 'unix-seconds', false],
    ['1799390400.5', 'unix-seconds', false],
    ['1799390400500', 'unix-milliseconds', false],
    ['13.01.2027 06:40', 'day-first', true],
    ['1/13/2027 6:40 AM', 'month-first', true],
  ])('%s is %s', (text, format, local) => expect(workedOutFormat([text], false)).toEqual({ format, local }));
  it('one line that fits only one way decides for those that fit both', () =>
    expect(workedOutFormat(['03/04/2027', '04/04/2027', '13/04/2027'], false)).toMatchObject({ format: 'day-first' }));
  it('where all fit both, nothing is guessed', () =>
    expect(workedOutFormat(['03/04/2027', '04/04/2027'], false)).toEqual({ trouble: 'both', text: '03/04/2027' }));
  it('a broken line does not outvote the others', () =>
    expect(workedOutFormat(['2027-', 'x', '2027-01-08T06:40:00Z'], false)).toMatchObject({ format: 'iso' }));
  it.each(['abc', '12', '20270108', ''])('"%s" tells nothing', (text) =>
    expect(workedOutFormat([text], false)).toEqual({ trouble: 'neither', text }),
  );
});
