import { describe, expect, it } from 'vitest';
import { at, diagnosed, measured, recordOf, stated, theOne } from '../../../../../tests/diagnosis/kit.js';
import { typical } from '../../../../../tests/diagnosis/typical.js';

describe('obstruction', () => {
  it('is told from the first to the last sample in its shade, with its depth', () => {
    const found = theOne(diagnosed(typical.obstruction()), 'obstruction');
    expect([found.start, found.end]).toEqual([at(11, 10), at(11, 12) - 300_000]);
    expect([found.ongoing, found.severity]).toEqual([false, 'watch']);
    expect(measured(found, 'depth')).toBeCloseTo(60, 0);
    expect(measured(found, 'length')).toBe(6900);
    expect(measured(found, 'unevenness of the bottom over its depth')).toBeLessThan(0.02);
  });
  it('is for the record below the alarm threshold', () => {
    const shallow = recordOf((t) => (t >= at(11, 10) && t < at(11, 12) ? 0.78 : 1), { days: 20 });
    expect(theOne(diagnosed(shallow), 'obstruction').severity).toBe('note');
  });
  it('still there at the end of the log asks to go', () => {
    const standing = diagnosed(recordOf((t) => (t >= at(19, 22) ? 0.3 : 1), { days: 20 }));
    const found = theOne(standing, 'obstruction');
    expect([found.start, found.end, found.ongoing, found.severity]).toEqual([at(19, 22), standing.to, true, 'act']);
  });
  it('left standing for days is told once, from its edge', () => {
    const standing = diagnosed(recordOf((t) => (t >= at(14, 11) ? 0.2 : 1), { days: 20 }));
    expect(theOne(standing, 'obstruction').start).toBe(at(14, 11));
  });
  it('does not remove the fire signal that it makes', () =>
    expect(stated(diagnosed(typical.obstruction()), 'smoke-like')).toHaveLength(1));
  it.each(['smoke-like', 'misalignment-step'] as const)('is not stated of %s', (other) =>
    expect(stated(diagnosed(typical[other]()), 'obstruction')).toEqual([]),
  );
});
