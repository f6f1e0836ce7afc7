import { describe, expect, it } from 'vitest';
import { at, dayOf, hourOf, normalOf, recordOf, viewed } from '../../../../tests/diagnosis/kit.js';
import { minute } from '../columns/index.js';
import { heldRuns } from './held.js';

const holding = (from: number, to: number, quantum = 0) => {
  const record = recordOf(() => 0.9, { days: 4, quantum, noise: 0.002 });
  const { time, level, low, high } = record.trace;
  for (let i = 0; i < time.length; i++) {
    if ((time[i] as number) < from || (time[i] as number) > to) continue;
    level[i] = 0.875;
    low[i] = 0.875;
    high[i] = 0.875;
  }
  return viewed(record);
};

describe('heldRuns', () => {
  it('are rows of one value, from the first to the last', () => {
    const view = holding(at(1), at(1, 6));
    const [run, ...others] = heldRuns(view);
    expect(others).toEqual([]);
    expect([view.trace.time[run?.from ?? 0], view.trace.time[run?.to ?? 0]]).toEqual([at(1), at(1, 6)]);
    expect(run?.samples).toBe(73);
    expect(run?.usual).toBe(1);
  });
  it('are none where the scale itself holds values as long', () => {
    const coarse = recordOf((t) => 0.85 + 0.03 * Math.cos((hourOf(t) / 3) * Math.PI), { days: 4, quantum: 0.1 });
    expect(heldRuns(viewed(coarse))).toEqual([]);
  });
  it('are none on a scale of 1 %, on which steady light that drifts a little rests for days', () => {
    const resting = recordOf((t) => 1 + 0.004 * Math.sin((t - at(0)) / (at(3) - at(0))), {
      days: 30,
      quantum: 0.01,
      noise: 0.0004,
    });
    expect(heldRuns(viewed(resting))).toEqual([]);
  });
  it('are told on a fine scale though several make most of the log, and not on a scale of 1 %', () => {
    const stuck = (quantum: number) => {
      const record = recordOf((t) => 1 + 0.02 * Math.sin(hourOf(t)), { days: 4, quantum, noise: 0.004 });
      const { time, level, low, high } = record.trace;
      time.forEach((t, i) => {
        if (!((t > at(0, 6) && t < at(1, 12)) || (t > at(1, 18) && t < at(3)))) return;
        for (const column of [level, low, high]) column[i] = t < at(1, 15) ? 1 : 0.98;
      });
      return heldRuns(viewed(record));
    };
    expect(stuck(0)).toHaveLength(2);
    expect(stuck(0.01)).toEqual([]);
  });
  it('are none where a coarse scale rests whenever nothing shakes, at the end of each week', () => {
    // It shakes by some steps of the scale on five days of seven, but for two hours of the night.
    const held = (restsByNight: boolean, weeks: number) => {
      const works = (t: number): boolean => dayOf(t) % 7 < 5 && !(restsByNight && hourOf(t) >= 2 && hourOf(t) < 4);
      const shaken = recordOf((t) => 1 + (works(t) ? 0.005 * normalOf(Math.floor(t / minute), 2) : 0), {
        days: 7 * weeks,
        quantum: 0.0025,
        noise: 0.0002,
      });
      return heldRuns(viewed(shaken));
    };
    expect(held(true, 4)).toEqual([]);
    // Two of them, or several in a log whose other runs are short, may be faults of a logger.
    expect(held(true, 2)).toHaveLength(2);
    expect(held(false, 4)).toHaveLength(4);
  });
  it('are none of fewer samples than tell', () => expect(heldRuns(holding(at(1), at(1, 2)))).toEqual([]));
});
