import { describe, expect, it } from 'vitest';
import { UsageError } from '../columns/index.js';
import { askedTime, weekdays } from './askedTime.js';

const asked = (text: string) => askedTime(text, 'Europe/Lisbon');
const at640 = (6 * 60 + 40) * 60_000;

describe('askedTime', () => {
  it.each([
    ['2027-07-06T06:40:00Z', '2027-07-06T06:40:00Z'],
    ['2027-07-06T06:40:00+02:00', '2027-07-06T04:40:00Z'],
    ['2027-07-06 06:40', '2027-07-06T05:40:00Z'],
    [' 2027-01-05T06:40 ', '2027-01-05T06:40:00Z'],
  ])('%s is an instant, on the clocks of the site without an offset', (text, instant) =>
    expect(asked(text)).toEqual({ kind: 'instant', instant: Date.parse(instant) }),
  );
  it.each(['Tue 06:40', 'Tuesday 6:40', 'tuesdays, 06:40:00', '06:40 on Tuesdays', 'every Tues. at 06:40'])(
    '%s is a time of day on a day of the week',
    (text) => expect(asked(text)).toEqual({ kind: 'time-of-day', timeOfDay: at640, weekday: 2 }),
  );
  it('knows every day by its name and by three letters of it', () =>
    weekdays.forEach((name, at) => {
      expect(asked(`${name} 06:40`)).toMatchObject({ weekday: at + 1 });
      expect(asked(`${name.slice(0, 3)} 06:40`)).toMatchObject({ weekday: at + 1 });
    }));
  it('a time of day alone is one of any day', () =>
    expect(asked('06:40:30')).toEqual({ kind: 'time-of-day', timeOfDay: at640 + 30_000, weekday: undefined }));
  it.each([
    ['', 'is not a time'],
    ['Tuesday', 'names no time of day'],
    ['06:40 maybe', 'is not a time'],
    ['Tue Wed 06:40', 'is not a time'],
    ['06:40 07:40', 'is not a time'],
    ['24:40', 'is not a time'],
    ['6.40', 'is not a time'],
    ['06:60', 'is not a time'],
    ['2027-03-16', 'write it with its date and hour'],
    ['2027-02-30 06:40', 'write it with its date and hour'],
    ['2027-03-28 01:30', 'skip or repeat this hour: add the offset'],
    ['2027-10-31 01:30', 'skip or repeat this hour: add the offset'],
    ['\u001b[31m', '\\u001b'],
  ])('%j is refused: %s', (text, says) => {
    expect(() => asked(text)).toThrow(UsageError);
    expect(() => asked(text)).toThrow(says);
  });
});
