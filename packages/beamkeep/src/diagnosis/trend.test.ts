import { describe, expect, it } from 'vitest';
import { at, chanceOf, dayOf, diagnosed, hourOf, left, recordOf } from '../../../../tests/diagnosis/kit.js';
import { cleaning, heatOfDay, typical } from '../../../../tests/diagnosis/typical.js';
import { day } from '../columns/index.js';
import type { BeamDiagnosis } from './diagnoseBeams.js';
import { trend } from './trend.js';

const trendOf = ({ picture, findings }: BeamDiagnosis) =>
  picture === undefined ? undefined : trend(picture, findings);

describe('trend', () => {
  it('is the slow loss with its daily cycle taken off, and the daily low of the sway', () => {
    const slow = (t: number): number => (0.02 * (t - at(0))) / day;
    const told = trendOf(diagnosed(recordOf((t) => left(slow(t) + 0.3 * heatOfDay(t)), { days: 40 })));
    expect(told).toBeDefined();
    for (const d of [10, 20, 30]) expect(told?.loss[24 * d]).toBeCloseTo(slow(at(d)), 0);
    expect(told?.dailyLow).toBeGreaterThan(0.1);
    expect(told?.dailyLow).toBeLessThan(0.4);
    expect(told?.creeping).toBe(false);
  });
  it('holds the low of a structure under a load, which no cycle of the day shares', () => {
    const under = (t: number, lost: number): number => {
      const begin = 9 + 3 * chanceOf(dayOf(t), 5);
      return dayOf(t) % 7 < 5 && hourOf(t) >= begin && hourOf(t) < begin + 0.7
        ? lost * (1 - 0.5 * chanceOf(dayOf(t), 6))
        : 0;
    };
    const told = (lost: number) =>
      trendOf(
        diagnosed(
          recordOf((t) => left((0.02 * (t - at(0))) / day) - under(t, lost), { days: 40, intervalSeconds: 60 }),
        ),
      )?.dailyLow;
    expect(told(0)).toBeLessThan(0.05);
    expect(told(0.1)).toBeGreaterThan(0.4); // 0.1 of what dirt leaves, 0.46 to 0.55 dB
    expect(told(0.1)).toBeLessThan(0.6);
    expect(told(-0.1)).toBeLessThan(0.05);
  });
  it('tells a creeping aim, and where the level was restored', () => {
    expect(trendOf(diagnosed(typical['misalignment-drift']()))?.creeping).toBe(true);
    const again = recordOf((t) => left((0.02 * (t - (t < cleaning ? at(0) : cleaning))) / day), { days: 60 });
    expect(trendOf(diagnosed(again))?.breaks).toEqual([{ time: cleaning, restoration: true }]);
  });
  it('is none where no slow loss goes on', () => {
    expect(trendOf(diagnosed(typical['process-aerosol']()))).toBeUndefined();
    expect(trendOf(diagnosed(typical.cleaned()))).toBeUndefined();
  });
});
