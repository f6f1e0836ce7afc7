import { describe, expect, it } from 'vitest';
import {
  at,
  diagnosed,
  iso,
  left,
  measured,
  recordOf,
  siteOf,
  stated,
  theOne,
} from '../../../../../tests/diagnosis/kit.js';
import { cleaning, healthy, typical } from '../../../../../tests/diagnosis/typical.js';

describe('cleaned', () => {
  it('is the instant of the first sample after, with the step that was put in', () => {
    const found = theOne(diagnosed(typical.cleaned()), 'cleaned');
    expect([found.start, found.end, found.ongoing, found.severity]).toEqual([cleaning, cleaning, false, 'note']);
    expect(measured(found, 'step up, as a share of clean air', '%')).toBeCloseTo(100 * (1 - left(0.6)), -0.5);
    expect(measured(found, 'step up, in decibels', 'dB')).toBeCloseTo(0.6, 1);
  });
  it('is less than likely where the reading was set anew some hours after it fell', () => {
    const fell = recordOf((t) => (t < at(1, 9) || t >= at(1, 12) ? 1 : 0.93), { days: 2.5, intervalSeconds: 60 });
    const after = (work: string) =>
      stated(diagnosed(fell, siteOf({}, { visits: [{ time: iso(at(1, 12)), beam: 'B1', work }] })), 'cleaned');
    expect(after('realigned')).toHaveLength(1);
    expect(after('renormalised')).toEqual([]);
  });
  it('is surer with a visit, and less than likely where the reading was set back to clean air', () => {
    const small = recordOf((t) => (t < at(12, 9) ? 0.985 : 1), { days: 24 });
    const visited = (work: string) =>
      siteOf({}, { visits: [{ time: iso(at(12, 8)), until: iso(at(12, 10)), beam: 'B1', work }] });
    const sure = (work: string) =>
      diagnosed(small, visited(work)).findings.find((f) => f.cause === 'cleaned')?.confidence ?? 0;
    expect(sure('cleaned')).toBeGreaterThan(sure('tested'));
    expect(sure('renormalised')).toBeLessThan(0.5);
  });
  it('is not stated of a gain step above clean air', () =>
    expect(stated(diagnosed(recordOf((t) => (t < at(12, 9) ? 1 : 1.15), { days: 24 })), 'cleaned')).toEqual([]));
  it('is stated of a re-aiming after a knock that found a better peak, and of a loss that came back with more', () => {
    const better = recordOf((t) => (t < at(8, 9) ? 1 : t < at(14, 9) ? 0.85 : 1.12), { days: 24 });
    expect(theOne(diagnosed(better), 'cleaned').start).toBe(at(14, 9));
    const more = recordOf((t) => (t < at(14, 9) ? 1 - 0.25 * ((t - at(0)) / (at(14, 9) - at(0))) ** 2 : 1.07), {
      days: 24,
    });
    expect(theOne(diagnosed(more), 'cleaned').start).toBe(at(14, 9));
  });
  it.each(['obstruction'] as const)('is not stated of %s', (other) =>
    expect(stated(diagnosed(typical[other]()), 'cleaned')).toEqual([]),
  );
  it('is not stated of a healthy beam', () => expect(stated(diagnosed(healthy()), 'cleaned')).toEqual([]));
});
