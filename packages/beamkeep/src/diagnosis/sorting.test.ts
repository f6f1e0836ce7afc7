import { describe, expect, it } from 'vitest';
import { at, pictured, recordOf, rise } from '../../../../tests/diagnosis/kit.js';
import { typical } from '../../../../tests/diagnosis/typical.js';
import type { Picture } from './picture.js';
import { climbIn, isBlock } from './sorting.js';

/** Kinds of the excursions that lose light, each once. */
const kinds = ({ excursions, kind }: Picture) => [
  ...new Set(excursions.filter((e) => e.depth > 0.03).map((e) => kind.get(e))),
];

describe('sortExcursions', () => {
  it.each([
    ['smoke-like', 'smoke'],
    ['obstruction', 'block'],
    ['condensation', 'film'],
    ['ambient-light', 'light'],
  ] as const)('sorts %s as %s', (cause, kind) => expect(kinds(pictured(typical[cause]()))).toEqual([kind]));
  it('sorts most of process-aerosol as dust', () => {
    const { excursions, kind } = pictured(typical['process-aerosol']());
    expect(excursions.filter((e) => kind.get(e) === 'dust').length / excursions.length).toBeGreaterThan(0.5);
  });
  it('keeps smoke from being an object, however fast it leaves', () => {
    const vented = pictured(
      recordOf((t) => (t < at(6, 10) || t >= at(6, 12) ? 1 : 1 - 0.5 * rise(t, at(6, 10), at(6, 11))), { days: 12 }),
    );
    const [e] = vented.excursions;
    expect(e && isBlock(vented, e)).toBe(false);
    expect(e && climbIn(vented, e)?.lost).toBeCloseTo(0.5, 1);
    expect(kinds(vented)).toEqual(['smoke']);
  });
});
