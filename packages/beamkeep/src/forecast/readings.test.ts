import { describe, expect, it } from 'vitest';
import type { DailyLoss } from './dailyLoss.js';
import { readings } from './readings.js';

const run = (losses: readonly number[], number = 0, from = 0): DailyLoss[] =>
  losses.map((loss, row) => ({ at: from + row, loss, run: number }));
const ramp = (start: number, length = 10): number[] => Array.from({ length }, (_, row) => start + 0.02 * row);

describe('readings', () => {
  it('guesses the rate from what runs gain, not from jumps between them', () => {
    const days = [...run(ramp(0)), ...run(ramp(0), 1, 10)];
    expect(readings(days, [{ time: 0, restoration: true }])?.pilot).toBeCloseTo(0.02, 12);
  });
  it('takes what a knock took off the dirt', () => {
    const known = readings([...run(ramp(0)), ...run(ramp(1.2), 1, 10)], [{ time: 0, restoration: false }]);
    expect(known?.ground).toBeCloseTo(1.06, 12); // from 0.16 to 1.22, smoothed
    expect(known?.soil.at(-1)).toBeCloseTo(0.3, 12);
  });
  it('adds up what knocks took, one after the other', () => {
    const days = [...run(ramp(0)), ...run(ramp(1.2), 1, 10), ...run(ramp(2.4), 2, 20)];
    const breaks = [
      { time: 0, restoration: false },
      { time: 0, restoration: false },
    ];
    const known = readings(days, breaks);
    expect(known?.ground).toBeCloseTo(2 * 1.06, 12);
    expect(known?.soil.at(-1)).toBeCloseTo(0.44, 12); // what the runs gained, smoothed, and the gap between them
  });
  it('leaves of a knock no more than re-aiming left of the loss', () => {
    const days = [...run(ramp(0)), ...run(ramp(1.2), 1, 10), ...run(ramp(0.05), 2, 20)];
    const breaks = [
      { time: 0, restoration: false },
      { time: 0, restoration: true },
    ];
    expect(readings(days, breaks)?.ground).toBeCloseTo(0.07, 12);
  });
  it('counts dirt from where the beam was brightest, be that above clean air', () => {
    const known = readings(run(ramp(-0.3)), []);
    expect(known?.ground).toBeCloseTo(-0.28, 12);
    expect(known?.soil.at(-1)).toBeCloseTo(0.14, 12);
  });
  it('sees no trend in noise', () =>
    expect(readings(run([0.1, 0.12, 0.09, 0.11, 0.1, 0.12, 0.1, 0.11, 0.09]), [])).toBeUndefined());
  it('sees none in a beam that gets cleaner', () =>
    expect(readings(run([0.5, 0.4, 0.3, 0.2, 0.1]), [])).toBeUndefined());
});
