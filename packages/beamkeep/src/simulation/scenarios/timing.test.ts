import { describe, expect, it } from 'vitest';
import { random } from '../random.js';
import { drawTiming } from './timing.js';

describe('drawTiming', () => {
  it('keeps within its budget and lasts as long as it must', () => {
    const draw = random(1, 'timing');
    for (const pace of ['fast', 'medium', 'slow'] as const) {
      for (let k = 0; k < 50; k++) {
        const needed = pace === 'fast' ? 0 : 3;
        const { intervalSeconds, samples } = drawTiming(draw, pace, 30_000, needed);
        expect(samples).toBeLessThanOrEqual(30_000);
        expect((samples * intervalSeconds) / 86_400).toBeGreaterThanOrEqual(needed * 0.99);
      }
    }
  });
});
