import { describe, expect, it } from 'vitest';
import { at, dayOf, hourOf, pictured, recordOf, siteOf, viewed } from '../../../../tests/diagnosis/kit.js';
import { families, hoursBetween, solarHour } from './families.js';

describe('families', () => {
  const record = recordOf(
    (t) => (dayOf(t) % 2 === 0 && hourOf(t) >= 10 && hourOf(t) < 11 ? 0.8 : t >= at(5, 20) && t < at(5, 21) ? 0.8 : 1),
    { days: 12 },
  );
  const picture = pictured(record);
  const dips = picture.excursions.filter((e) => e.sign === 1 && e.depth > 0.1);
  it('are the like at the same hours on other days', () => {
    expect(dips).toHaveLength(7);
    const own = families(picture.view, dips, () => false);
    const [morning] = dips;
    expect(morning && own.get(morning)).toMatchObject({ otherDays: 5, others: 5, hoursApart: 0, oneWeekday: false });
  });
  it('law: one far off in the hours has none', () => {
    const own = families(picture.view, dips, () => false);
    const evening = dips.find((e) => hourOf(e.start) === 20);
    expect(evening && own.get(evening)?.otherDays).toBe(0);
  });
  it('law: what reached the alarm threshold vouches for no other', () => {
    const own = families(picture.view, dips, () => true);
    expect([...own.values()].map(({ otherDays }) => otherDays)).toEqual(dips.map(() => 0));
  });
});

describe('hours', () => {
  it('go the short way round', () =>
    expect([hoursBetween(23, 1), hoursBetween(1, 23), hoursBetween(6, 18)]).toEqual([2, 2, 12]));
  it('are told by the sun where the longitude is known', () => {
    const view = viewed(
      recordOf(() => 1, { days: 1 }),
      siteOf({}, { latitude: 41, longitude: -15 }),
    );
    expect(solarHour(view, at(0, 12))).toBe(11);
  });
});
