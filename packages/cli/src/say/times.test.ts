import { describe, expect, it } from 'vitest';
import { clock, length, stretch } from './times.js';

const at = (text: string) => Date.parse(text);
const lisbon = clock('Europe/Lisbon');

describe('clock', () => {
  it('tells the wall time of the zone', () => {
    expect(lisbon.wall(at('2027-01-09T08:40:30Z'))).toBe('2027-01-09 08:40');
    expect(lisbon.wall(at('2027-07-09T08:40:30Z'), true)).toBe('2027-07-09 09:40:30');
    expect(clock('Australia/Lord_Howe').wall(at('2027-01-09T20:00:00Z'))).toBe('2027-01-10 07:00');
  });
  it('names the offset of an hour that comes twice, and of no other', () => {
    // Europe/Lisbon sets its clocks back at 01:00 UTC on 31 October 2027 (IANA time zone database).
    expect(lisbon.wall(at('2027-10-31T00:30:00Z'))).toBe('2027-10-31 01:30 (UTC+01:00)');
    expect(lisbon.wall(at('2027-10-31T01:30:00Z'))).toBe('2027-10-31 01:30 (UTC+00:00)');
    expect(lisbon.wall(at('2027-10-31T02:30:00Z'))).toBe('2027-10-31 02:30');
  });
  it('knows how long ago midnight was on the clock', () => {
    expect(lisbon.sinceMidnight(at('2027-07-09T08:40:30Z'))).toBe(((9 * 60 + 40) * 60 + 30) * 1000);
  });
});

describe('stretch', () => {
  const utc = clock('UTC');
  const told = (start: string, end: string, ongoing?: boolean) => stretch(utc, at(start), at(end), ongoing);
  it('gives days for what takes days', () =>
    expect(told('2027-01-09T00:00:00Z', '2027-03-01T10:00:00Z')).toBe('2027-01-09 to 2027-03-01'));
  it('says the day once', () =>
    expect(told('2027-01-09T08:00:00Z', '2027-01-09T08:40:00Z')).toBe('2027-01-09 08:00 to 08:40'));
  it('says both days where there are two', () =>
    expect(told('2027-01-09T22:00:00Z', '2027-01-10T08:40:00Z')).toBe('2027-01-09 22:00 to 2027-01-10 08:40'));
  it('gives seconds where they matter', () =>
    expect(told('2027-01-09T08:00:05Z', '2027-01-09T08:00:35Z')).toBe('2027-01-09 08:00:05 to 08:00:35'));
  it('gives one time for an instant', () =>
    expect(told('2027-01-09T08:00:00Z', '2027-01-09T08:00:00Z')).toBe('2027-01-09 08:00'));
  it('says since when what still holds', () => {
    expect(told('2027-01-09T08:00:00Z', '2027-03-01T10:00:00Z', true)).toBe('since 2027-01-09');
    expect(told('2027-01-09T08:00:00Z', '2027-01-09T10:00:00Z', true)).toBe('since 2027-01-09 08:00');
  });
});

describe('length', () => {
  it.each([
    [0, '0 s'],
    [40_000, '40 s'],
    [720_000, '12 min'],
    [3_661_000, '1 h 1 min'],
    [90_000_000, '1 d 1 h'],
    [86_400_000, '1 d'],
    [86_460_000, '1 d'],
  ])('%d ms is told as %s', (milliseconds, told) => expect(length(milliseconds)).toBe(told));
});
