import { describe, expect, it } from 'vitest';
import { at, diagnosed, measured, recordOf, stated, theOne } from '../../../../../tests/diagnosis/kit.js';
import { healthy, typical } from '../../../../../tests/diagnosis/typical.js';
import { hour, minute } from '../../columns/index.js';

describe('data-gap', () => {
  it('runs from the last sample before to the first after', () => {
    const found = theOne(diagnosed(typical['data-gap']()), 'data-gap');
    expect([found.start, found.end]).toEqual([at(9, 6), at(10, 18)]);
    expect(measured(found, 'length')).toBe(36 * 3600);
    expect(measured(found, 'samples missing')).toBe(36 * 12 - 1);
    expect([found.severity, found.ongoing]).toEqual(['note', false]);
  });
  it('stuck: from the first to the last held', () => {
    const { trace, ...rest } = recordOf(() => 1, { days: 20 });
    const from = trace.time.indexOf(at(8, 3));
    const to = trace.time.indexOf(at(8, 11));
    const level = trace.level.slice();
    level.fill(level[from] as number, from, to + 1);
    const single = Float32Array.from(level);
    const found = theOne(diagnosed({ ...rest, trace: { ...trace, level, low: single, high: single } }), 'data-gap');
    expect([found.start, found.end]).toEqual([at(8, 3), at(8, 11)]);
    expect(measured(found, 'samples of one value')).toBe(97);
  });
  it('is not told of a few samples lost', () => {
    const few = recordOf((t) => (t > at(5) && t < at(5) + 2 * hour - minute ? Number.NaN : 1), { days: 20 });
    expect(stated(diagnosed(few), 'data-gap')).toEqual([]);
  });
  it('is not told of a coarse scale, which holds its values by itself', () => {
    const coarse = recordOf(() => 1, { days: 20, quantum: 0.01, noise: 0.002 });
    expect(stated(diagnosed(coarse), 'data-gap')).toEqual([]);
  });
  it('is no more than possible where the whole log is one value: nothing shows what the scale holds by itself', () => {
    const still = diagnosed(recordOf(() => 1, { days: 20, quantum: 0.01, noise: 0.0001 }));
    const gap = still.findings.find(({ cause }) => cause === 'data-gap');
    expect(gap?.confidence).toBeLessThan(0.5);
    expect(gap?.confidence).toBeGreaterThan(0.05);
  });
  it('is not told of a healthy beam, nor of a flat block', () => {
    expect(stated(diagnosed(healthy()), 'data-gap')).toEqual([]);
    expect(stated(diagnosed(typical.obstruction()), 'data-gap')).toEqual([]);
  });
});
