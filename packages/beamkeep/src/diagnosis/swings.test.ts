import { describe, expect, it } from 'vitest';
import { chanceOf, left, pictured, recordOf } from '../../../../tests/diagnosis/kit.js';
import { healthy, heatOfDay, lobe } from '../../../../tests/diagnosis/typical.js';
import { swings } from './swings.js';

describe('swings', () => {
  it('are those that were put in, day by day', () => {
    const days = swings(pictured(recordOf((t) => left(lobe(0.5 + 0.12 * heatOfDay(t))), { days: 20 })));
    expect(days).toHaveLength(20);
    days.slice(1, -1).forEach((day, k) => {
      const turn = 0.12 * (0.6 + 0.4 * chanceOf(k + 1, 7));
      expect(Math.abs(day.swing - left(lobe(0.5 - turn)) + left(lobe(0.5 + turn)))).toBeLessThan(0.015);
      expect(day.explained).toBeGreaterThan(0.8);
    });
  });
  it('are small on a healthy beam, none where no cycle could be fitted', () => {
    for (const { swing } of swings(pictured(healthy()))) expect(swing).toBeLessThan(0.005);
    expect(swings(pictured(recordOf(() => 1, { days: 2 })))).toEqual([]);
  });
});
