import { describe, expect, it } from 'vitest';
import { longRunSpread } from './longRunSpread.js';
import { normalNoise } from './normalNoise.js';

describe('longRunSpread', () => {
  const noise = normalNoise(61);
  const white = Float64Array.from({ length: 24_000 }, () => 2 * noise());

  it('unrelated neighbours: the spread of one value', () => {
    expect(longRunSpread(white, 24)).toBeGreaterThan(1.85);
    expect(longRunSpread(white, 24)).toBeLessThan(2.15);
  });
  it('each value keeping 0.8 of the one before: five times as much', () => {
    const kept = white.slice();
    for (let i = 1; i < kept.length; i++) kept[i] = 0.8 * (kept[i - 1] as number) + (white[i] as number);
    const ratio = longRunSpread(kept, 100) / longRunSpread(white, 100);
    expect(ratio).toBeGreaterThan(4.2); // 5 for endless blocks
    expect(ratio).toBeLessThan(5.5);
  });
  it('steps, wild values and holes move it little', () => {
    const rough = white.map((value, i) => (i % 31 === 0 ? Number.NaN : value + (i % 5000 < 2500 ? 0 : 40)));
    expect(longRunSpread(rough, 24) / longRunSpread(white, 24)).toBeLessThan(1.1);
  });
  it('too few blocks tell nothing', () => expect(longRunSpread([1, 2, 3, 4], 2)).toBeNaN());
  it('says what must change', () => expect(() => longRunSpread([1], 1)).toThrow('block 1 must be a whole number'));
});
