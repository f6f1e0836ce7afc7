import { describe, expect, it } from 'vitest';
import { wallTime } from './wallTime.js';

describe('wallTime', () => {
  it.each([
    ['2027-07-01T10:00:07Z', 'Europe/Lisbon', '2027-07-01 11:00:07'],
    ['2027-01-20T23:30:00Z', 'Asia/Tokyo', '2027-01-21 08:30:00'],
    [null, 'UTC', 'not known'],
  ])('%s in %s is %s', (iso, zone, told) => expect(wallTime(iso, zone)).toBe(told));
});
