import { describe, expect, it } from 'vitest';
import { recordOf, siteOf, viewed } from '../../../../tests/diagnosis/kit.js';
import { cut } from './cells.js';
import { localDays } from './localDays.js';

describe('localDays', () => {
  const over = (start: number, days: number, timeZone: string) => {
    const record = recordOf(() => 1, { days, intervalSeconds: 600, start });
    const view = viewed(record, siteOf({}, { timeZone }));
    return localDays(view, cut(record.trace, 600, view.clock.offset(start)));
  };
  it('holds every row once, in order', () => {
    const days = over(Date.UTC(2027, 2, 25, 5, 30), 7, 'Europe/Lisbon');
    expect(days[0]?.from).toBe(0);
    expect(days.at(-1)?.to).toBe(7 * 144 - 1);
    for (let k = 1; k < days.length; k++) {
      expect(days[k]?.from).toBe((days[k - 1]?.to ?? 0) + 1);
      expect(days[k]?.number).toBe((days[k - 1]?.number ?? 0) + 1);
    }
  });
  it('a day of spring has 23 hours, one of autumn 25', () => {
    const rows = (start: number) => over(start, 3, 'Europe/Lisbon').map(({ from, to }) => to - from + 1);
    expect(rows(Date.UTC(2027, 2, 27))).toEqual([144, 138, 144, 6]);
    expect(rows(Date.UTC(2027, 9, 29, 23))).toEqual([144, 150, 138]);
  });
});
