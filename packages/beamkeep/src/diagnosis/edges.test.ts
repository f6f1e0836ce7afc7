import { describe, expect, it } from 'vitest';
import { at, pictured, recordOf, rise } from '../../../../tests/diagnosis/kit.js';
import { climbIn } from './climbsWithin.js';
import { isBlock } from './edges.js';

describe('isBlock', () => {
  it('keeps smoke from being an object, however fast it leaves', () => {
    const vented = pictured(
      recordOf((t) => (t < at(6, 10) || t >= at(6, 12) ? 1 : 1 - 0.5 * rise(t, at(6, 10), at(6, 11))), { days: 12 }),
    );
    const { excursions, kind } = vented;
    const [e] = excursions;
    expect(e && isBlock(vented, e)).toBe(false);
    expect(e && climbIn(vented, e)?.lost).toBeCloseTo(0.5, 1);
    expect([...new Set(excursions.filter(({ depth }) => depth > 0.03).map((one) => kind.get(one)))]).toEqual(['smoke']);
  });
});
