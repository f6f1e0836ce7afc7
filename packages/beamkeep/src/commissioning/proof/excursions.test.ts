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
});
