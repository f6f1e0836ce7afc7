import { describe, expect, it } from 'vitest';
import { excursions } from './excursions.js';

const settings = { alarmThreshold: 35, faultThreshold: 90 };
const of = (...values: readonly number[]) =>
  excursions(
    { time: Float64Array.from(values, (_, row) => 1000 * row), obscuration: Float64Array.from(values) },
    settings,
    1,
  );

describe('excursions', () => {
  it('measures a stay away from clean air', () => {
    const { clean, list } = of(1, 1, 1, 1, 40, 96, 97, 96, 60, 1, 1, 1);
    expect(clean).toBe(1);
    expect(list).toEqual([
      {
        from: 4,
        to: 9,
        start: 4000,
        end: 9000,
        largest: 97,
        held: 96,
        last: 96,
        alarmAt: 4000,
        faultAt: 5000,
        alarmHeldSeconds: 5,
        faultHeldSeconds: 3,
        riseSeconds: 2,
      },
    ]);
  });
  it('takes the longest time in one go, not the sum', () =>
    expect(of(0, 0, 0, 50, 50, 20, 50, 50, 50, 0, 0).list[0]?.alarmHeldSeconds).toBe(3));
  it('joins what a single clean sample parts, and parts what two seconds of clean air do', () => {
    expect(of(0, 0, 0, 50, 50, 0, 50, 50, 0, 0, 0).list).toHaveLength(1);
    expect(of(0, 0, 0, 50, 50, 0, 0, 0, 50, 50, 0, 0).list).toHaveLength(2);
  });
  it('has no end and no rise where there is none', () => {
    const [stay] = of(0, 0, 0, 50, 50, 50).list;
    expect(stay?.end).toBeNaN();
    expect(stay?.riseSeconds).toBeNaN();
    expect(stay?.faultAt).toBeNaN();
  });
  it('finds nothing in clean air, however noisy', () => {
    const values = Array.from({ length: 300 }, (_, row) => 2 * Math.sin(row * row * 0.7));
    expect(of(...values).list).toEqual([]);
  });
  it('clean is what stood before the first reading of 10 %, or of half of a lower alarm threshold', () => {
    expect(of(1, 3, 9.9, 10, 50, 50, 1, 1).clean).toBe(3);
    const low = { alarmThreshold: 12, faultThreshold: 90 };
    const test = { time: Float64Array.of(0, 1000, 2000, 3000), obscuration: Float64Array.of(1, 1, 6, 50) };
    expect(excursions(test, low, 1).clean).toBe(1);
    expect(of(50, 50, 50).clean).toBe(0); // nothing stood before: clean air is taken for clean
    expect(of(3, 4, 5).clean).toBe(4);
  });
  it('2 % from clean is not away, more is', () => {
    expect(of(1, 1, 1, 1, 3, 3, 3, 1, 1, 1).list).toEqual([]);
    expect(of(1, 1, 1, 1, 3.1, 3.1, 3.1, 1, 1, 1).list).toHaveLength(1);
  });
  it('in noise, five of its spreads', () => {
    const noisy = (step: number) => {
      const values = Array.from({ length: 60 }, (_, row) => [0, 2, 1, 3][row % 4] as number);
      return of(...values, 1 + step, 1 + step, ...values).list.length;
    };
    // Changes of +2, -1, +2, -3: their middle is 0.5, their usual distance from it 1.5, so a reading's spread is 1.57.
    expect(noisy(8)).toBe(0);
    expect(noisy(11)).toBe(1);
  });
  it('what was held is the middle of what lies within a tenth of the largest', () =>
    expect(of(0, 0, 50, 89, 90, 92, 100, 50, 0, 0).list[0]).toMatchObject({ held: 92, largest: 100 }));
  it('where it stands at the end is the middle of its last ten samples', () =>
    expect(of(0, 0, ...Array.from({ length: 20 }, (_, row) => 50 + row)).list[0]?.last).toBe(64.5));
  it('thresholds are reached at their figure', () =>
    expect(of(0, 0, 34.9, 35, 89.9, 90, 90, 0, 0).list[0]).toMatchObject({
      alarmAt: 3000,
      faultAt: 5000,
      alarmHeldSeconds: 4,
      faultHeldSeconds: 2,
    }));
  it('a hold that the log ends within lasts to its last sample', () =>
    expect(of(0, 0, 0, 50, 50, 50, 50).list[0]?.alarmHeldSeconds).toBe(3));
  it('a cover rises from the last clear sample, also where it halts on the way', () => {
    const rise = (...values: readonly number[]) => of(0, 0, 0, 0, 0, ...values, 0, 0, 0, 0, 0).list[0]?.riseSeconds;
    expect(rise(20, 5, 50, 95, 95)).toBe(2); // clear again at the second of them, at the fault at the fourth
    expect(rise(5, 5, 50, 95, 95)).toBe(2);
    expect(rise(10, 50, 95, 95)).toBe(3);
  });
  it('a log that begins covered has no clear sample to rise from', () =>
    expect(of(95, 95, 95, 0, 0, 0).list[0]).toMatchObject({ start: 0, riseSeconds: Number.NaN }));
  it('the interval between samples is handed on', () => expect(of(0, 0).intervalSeconds).toBe(1));
});
