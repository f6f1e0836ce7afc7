import { describe, expect, it } from 'vitest';
import { at, chanceOf, left, pictured, recordOf } from '../../../../tests/diagnosis/kit.js';
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
  it('are no less under dirt that grows, whose slow course would follow them in part', () => {
    const days = swings(
      pictured(
        recordOf((t) => left(lobe(0.3 + 0.05 * heatOfDay(t)) + (0.025 * (t - at(0))) / 86_400_000), { days: 24 }),
      ),
    );
    const put = (k: number): number => {
      const turn = 0.05 * (0.6 + 0.4 * chanceOf(k, 7));
      return left(lobe(0.3 - turn) + 0.025 * k) - left(lobe(0.3 + turn) + 0.025 * k);
    };
    const shares = days
      .slice(1, -1)
      .map(({ swing }, k) => swing / put(k + 1))
      .sort((a, b) => a - b);
    expect(shares[11]).toBeGreaterThan(0.9);
    expect(shares[11]).toBeLessThan(1.15);
  });
  it('are small on a healthy beam, none where no cycle could be fitted', () => {
    for (const { swing } of swings(pictured(healthy()))) expect(swing).toBeLessThan(0.005);
    expect(swings(pictured(recordOf(() => 1, { days: 2 })))).toEqual([]);
  });
});
