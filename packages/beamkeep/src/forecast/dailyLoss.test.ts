import { describe, expect, it } from 'vitest';
import { day, hour } from '../columns/index.js';
import { dailyLoss, dailyNoise, smoothed, withoutStrays } from './dailyLoss.js';

const series = (losses: readonly number[], step = day) => ({
  time: Float64Array.from(losses, (_, row) => row * step + 12 * hour),
  loss: Float64Array.from(losses),
});

describe('dailyLoss', () => {
  it('draws hours together by their median, at the middle of those that are there', () => {
    const time = Float64Array.of(1 * hour, 2 * hour, 6 * hour, 25 * hour);
    expect(dailyLoss(time, Float64Array.of(0.1, 0.9, 0.2, 0.3), [])).toEqual([
      { at: 3 / 24, loss: 0.2, run: 0 },
      { at: 25 / 24, loss: 0.3, run: 0 },
    ]);
  });
  it('leaves out what is not known', () => {
    const { time, loss } = series([0.1, Number.NaN, 0.3]);
    expect(dailyLoss(time, loss, []).map(({ at }) => at)).toEqual([0.5, 2.5]);
  });
  it('starts a run at each break, within a day too', () => {
    const time = Float64Array.of(1 * hour, 2 * hour, 20 * hour);
    const days = dailyLoss(time, Float64Array.of(1, 1, 0), [{ time: 20 * hour, restoration: true }]);
    expect(days.map(({ loss, run }) => [loss, run])).toEqual([
      [1, 0],
      [0, 1],
    ]);
  });
  it('counts breaks that no reading lies between', () => {
    const { time, loss } = series([1, 0]);
    const breaks = [
      { time: 13 * hour, restoration: false },
      { time: 14 * hour, restoration: true },
    ];
    expect(dailyLoss(time, loss, breaks).map(({ run }) => run)).toEqual([0, 2]);
  });
});

describe('withoutStrays', () => {
  const rising = Array.from({ length: 20 }, (_, row) => 0.01 * row + (row % 2) * 0.001);
  it('drops one wild day and keeps a jump that stays', () => {
    const { time, loss } = series(rising.map((value, row) => value + (row === 5 ? 0.5 : 0) + (row > 12 ? 0.5 : 0)));
    const kept = withoutStrays(dailyLoss(time, loss, []));
    expect(kept).toHaveLength(19);
    expect(kept.every(({ at }) => at !== 5.5)).toBe(true);
  });
});

describe('smoothed', () => {
  it('takes the median of five days and stays within a run', () => {
    const { time, loss } = series([0, 1, 2, 3, 4, 100, 101]);
    const days = dailyLoss(time, loss, [{ time: 5 * day, restoration: false }]);
    expect([...smoothed(days)]).toEqual([1, 1.5, 2, 2.5, 3, 100.5, 100.5]);
  });
});

describe('dailyNoise', () => {
  it('is not widened by a few bursts', () => {
    const { time, loss } = series(Array.from({ length: 40 }, (_, row) => (row > 10 ? 1 : 0) + (row > 30 ? 1 : 0)));
    expect(dailyNoise(dailyLoss(time, loss, []))).toBe(0.0005);
  });
});
