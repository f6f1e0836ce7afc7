import { describe, expect, it } from 'vitest';
import { at, left, pictured, recordOf } from '../../../../tests/diagnosis/kit.js';
import { cleaning, typical } from '../../../../tests/diagnosis/typical.js';
import { slowStretches } from './slowLoss.js';

describe('slowStretches', () => {
  it('lie between restorations, with what was gained and what came back', () => {
    const [dirty, clean] = slowStretches(pictured(typical.cleaned()));
    expect([dirty?.start, dirty?.end, dirty?.restored]).toEqual([at(0), cleaning - 300_000, true]);
    expect(dirty?.gained).toBeCloseTo(0.6, 1);
    expect(dirty?.restoredBy).toBeCloseTo(0.6, 1);
    expect([clean?.start, clean?.restored]).toEqual([cleaning, false]);
    expect(clean?.gained).toBeCloseTo(0, 1);
  });
  it('never tell more than all of the light, though the level began above clean air', () => {
    const { gainedShare } =
      slowStretches(pictured(recordOf((t) => 1.4 - (1.39 * (t - at(0))) / (at(30) - at(0)), { days: 30 })))[0] ?? {};
    expect(gainedShare).toBeGreaterThan(0.9);
    expect(gainedShare).toBeLessThanOrEqual(1);
  });
  it('take a knock inside out: its loss is no dirt', () => {
    const knocked = recordOf((t) => left((0.02 * (t - at(0))) / (at(1) - at(0)) + (t < at(15, 10) ? 0 : 0.9)), {
      days: 30,
    });
    const [stretch] = slowStretches(pictured(knocked));
    expect(stretch?.gained).toBeCloseTo(0.6, 1);
  });
  it('tell speeding up and a growing sway of an aim that creeps, neither of dirt', () => {
    const [creep] = slowStretches(pictured(typical['misalignment-drift']()));
    expect(creep?.speedsUp).toBeGreaterThan(1);
    expect(creep?.swayGrowth).toBeGreaterThan(2);
    const [dirt] = slowStretches(pictured(typical.contamination()));
    expect(dirt?.speedsUp).toBeLessThan(0);
    expect(dirt?.steadiness).toBeGreaterThan(0.95);
  });
});
