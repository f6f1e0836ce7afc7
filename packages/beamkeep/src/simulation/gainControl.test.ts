import { describe, expect, it } from 'vitest';
import { hour } from '../columns/index.js';
import { gainOf } from './gainControl.js';

const time = Float64Array.from({ length: 24 * 60 }, (_, k) => k * hour);
const level = (of: (hours: number) => number) => time.map((_, k) => of(k));

describe('gainOf', () => {
  it('brings back what slow dirt takes', () => {
    const dirty = level((hours) => 1 - 0.0002 * hours);
    const gain = gainOf({ hours: 24, limitDecibels: 3 }, time, dirty);
    const last = time.length - 1;
    expect((dirty[last] ?? 0) * 10 ** ((gain[last] ?? 0) / 10)).toBeGreaterThan(0.99);
  });

  it('ends at its limit', () => {
    const gain = gainOf(
      { hours: 10, limitDecibels: 1 },
      time,
      level(() => 0.5),
    );
    expect(Math.max(...gain)).toBe(1);
  });

  it('lets an hour of smoke through', () => {
    const gain = gainOf(
      { hours: 48, limitDecibels: 3 },
      time,
      level((hours) => (hours >= 100 && hours < 101 ? 0.3 : 1)),
    );
    expect(Math.max(...gain)).toBeLessThan(0.1);
  });
});
