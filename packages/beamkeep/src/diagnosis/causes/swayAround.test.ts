import { describe, expect, it } from 'vitest';
import { at, left, pictured, recordOf } from '../../../../../tests/diagnosis/kit.js';
import { heatOfDay, lobe } from '../../../../../tests/diagnosis/typical.js';
import { swayAround } from './swayAround.js';

const around = (after: (t: number) => number) =>
  swayAround(
    pictured(recordOf((t) => left(t < at(13, 10) ? lobe(0.3 + 0.1 * heatOfDay(t)) : after(t)), { days: 26 })),
    at(13, 10),
  );

describe('swayAround', () => {
  it('grows when aim is lost along the movement', () =>
    expect(around((t) => lobe(0.6 + 0.1 * heatOfDay(t)))).toBeGreaterThan(1.5));
  it('stays as it was when dirt, or anything else that multiplies, takes light', () => {
    const dirty = around((t) => 0.8 + lobe(0.3 + 0.1 * heatOfDay(t)));
    expect(dirty).toBeGreaterThan(0.7);
    expect(dirty).toBeLessThan(1.4);
  });
  it('tells nothing of a beam that does not sway', () =>
    expect(swayAround(pictured(recordOf((t) => (t < at(13, 10) ? 1 : 0.8), { days: 26 })), at(13, 10))).toBeNaN());
});
