import fc from 'fast-check';
import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import type { TimeFormat } from '../site/index.js';
import { timeReader } from './civilTime.js';

/** What a reader makes of a whole text; undefined where it does not fit. */
function read(format: TimeFormat, text: string, comma = false): { time: number; local: boolean } | undefined {
  const reader = timeReader(format, comma);
  const bytes = strToU8(text);
  const found = reader.read(bytes, 0) && reader.end === bytes.length;
  return found ? { time: reader.time, local: reader.local } : undefined;
}
const at = (text: string): number => new Date(text).getTime();

describe('iso', () => {
  it.each([
    ['2027-01-08T06:40:00Z', '2027-01-08T06:40:00Z'],
    ['2027-01-08T06:40:00.250Z', '2027-01-08T06:40:00.250Z'],
    ['2027-01-08T06:40Z', '2027-01-08T06:40:00Z'],
    ['2027-01-08t06:40:00z', '2027-01-08T06:40:00Z'],
    ['2027-01-08 06:40:00+02:00', '2027-01-08T04:40:00Z'],
    ['2027-01-08T06:40:00-0330', '2027-01-08T10:10:00Z'],
    ['2027-01-08T06:40:00+01', '2027-01-08T05:40:00Z'],
    ['20270108T064000Z', '2027-01-08T06:40:00Z'],
    ['2027-01-08T24:00:00Z', '2027-01-09T00:00:00Z'],
    ['2016-12-31T23:59:60Z', '2017-01-01T00:00:00Z'],
    ['2028-02-29T00:00:00Z', '2028-02-29T00:00:00Z'],
  ])('%s has an offset', (text, instant) => expect(read('iso', text)).toEqual({ time: at(instant), local: false }));
  it.each([
    ['2027-01-08T06:40:00', '2027-01-08T06:40:00Z'],
    ['2027-01-08 06:40', '2027-01-08T06:40:00Z'],
    ['2027/01/08 06:40:05', '2027-01-08T06:40:05Z'],
    ['2027-01-08', '2027-01-08T00:00:00Z'],
    ['20270108T0640', '2027-01-08T06:40:00Z'],
  ])('%s is local', (text, clock) => expect(read('iso', text)).toEqual({ time: at(clock), local: true }));
  it('microseconds are kept as a fraction', () =>
    expect(read('iso', '2027-01-08T06:40:00.000250Z')?.time).toBe(at('2027-01-08T06:40:00Z') + 0.25));
  it('a comma marks decimals where it separates no cells', () => {
    expect(read('iso', '2027-01-08T06:40:00,5Z', true)?.time).toBe(at('2027-01-08T06:40:00.5Z'));
    expect(read('iso', '2027-01-08T06:40:00,5Z', false)).toBeUndefined();
  });
  it.each([
    '',
    '2027-',
    '2027-02-29T00:00:00Z',
    '2027-13-01T00:00:00Z',
    '2027-01-08T25:00:00Z',
    '2027-01-08T24:00:01.5',
    '2027-01-08T06:60:00Z',
    '2027-01-08T06:40:61Z',
    '2027-01-08T6:40',
    '2027-01-08T06:40:00+25:00',
    '0000-01-08T06:40:00Z',
    '2027-01/08T06:40:00Z',
    '2027-01-08T0x:40:00Z',
    '2027-01-08T06:40:00.Z',
    '20270108',
  ])('"%s" does not fit', (text) => expect(read('iso', text)).toBeUndefined());
  it('law: the quick look at a line of the same day gives what the long one gives', () =>
    fc.assert(
      fc.property(
        fc.date({ min: new Date('2027-01-08T00:00:00Z'), max: new Date('2027-01-08T23:59:59Z'), noInvalidDate: true }),
        fc.integer({ min: 0, max: 23 }),
        fc.integer({ min: 0, max: 255 }),
        (date, where, byte) => {
          const text = `${date.toISOString().slice(0, 19)}Z,1\n`;
          const bytes = strToU8(text);
          bytes[where] = byte;
          const known = timeReader('iso', false);
          known.read(strToU8('2027-01-08T00:00:00Z,'), 0);
          const fresh = timeReader('iso', false);
          const found = known.read(bytes, 0);
          expect(found).toBe(fresh.read(bytes, 0));
          if (found) expect([known.time, known.end, known.local]).toEqual([fresh.time, fresh.end, fresh.local]);
        },
      ),
      { seed: 2, numRuns: 2000 },
    ));
});

describe('day and month', () => {
  it('knows which is first', () => {
    expect(read('day-first', '04.03.2027 10:00')?.time).toBe(at('2027-03-04T10:00:00Z'));
    expect(read('month-first', '04/03/2027 10:00')?.time).toBe(at('2027-04-03T10:00:00Z'));
  });
  it.each([
    ['4/3/27 9:05', '2027-03-04T09:05:00Z'],
    ['04-03-2027T09:05:10', '2027-03-04T09:05:10Z'],
    ['04/03/2027', '2027-03-04T00:00:00Z'],
    ['04/03/2027 12:00:01 AM', '2027-03-04T00:00:01Z'],
    ['04/03/2027 12:30 pm', '2027-03-04T12:30:00Z'],
    ['04/03/2027 11:30 PM', '2027-03-04T23:30:00Z'],
  ])('day-first %s', (text, clock) => expect(read('day-first', text)).toEqual({ time: at(clock), local: true }));
  it('an offset is heard', () => expect(read('day-first', '04/03/2027 12:00 +01:00')).toBeUndefined());
  it.each(['31.02.2027', '4.3', '4/3-2027', '04/03/2027 13:00 PM', '04/03/2027 0:30 AM', '2027-03-04'])(
    '"%s" does not fit',
    (text) => expect(read('day-first', text)).toBeUndefined(),
  );
});

describe('unix', () => {
  it.each([
    ['unix-seconds', '1799390400', 1799390400000],
    ['unix-seconds', '1799390400.005', 1799390400005],
    ['unix-seconds', '1799390400.000250', 1799390400000.25],
    ['unix-seconds', '-1', -1000],
    ['unix-milliseconds', '1799390400250', 1799390400250],
    ['unix-milliseconds', '1799390400250.5', 1799390400250.5],
  ] as const)('%s %s', (format, text, time) => expect(read(format, text)).toEqual({ time, local: false }));
  it.each(['', '-', '1.7e9', 'x', '123456789012345678'])('"%s" does not fit', (text) =>
    expect(read('unix-seconds', text)).toBeUndefined(),
  );
});
