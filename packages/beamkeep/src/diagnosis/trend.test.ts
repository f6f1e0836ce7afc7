import { describe, expect, it } from 'vitest';
import { at, diagnosed, left, recordOf } from '../../../../tests/diagnosis/kit.js';
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
