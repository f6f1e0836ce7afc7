import { describe, expect, it } from 'vitest';
import {
  at,
  diagnosed,
  iso,
  left,
  measured,
  recordOf,
  rise,
  siteOf,
  stated,
  theOne,
} from '../../../../../tests/diagnosis/kit.js';
import { heatOfDay, knock, lobe, typical } from '../../../../../tests/diagnosis/typical.js';

describe('misalignment-step', () => {
  it('begins at the first sample after the knock and lasts, with the step that was put in', () => {
    const diagnosis = diagnosed(typical['misalignment-step']());
    const found = theOne(diagnosis, 'misalignment-step');
    expect([found.start, found.end, found.ongoing, found.severity]).toEqual([knock, diagnosis.to, true, 'act']);
    expect(measured(found, 'step down, as a share of clean air', '%')).toBeCloseTo(15, 0);
    expect(measured(found, 'step down, in decibels', 'dB')).toBeCloseTo(-10 * Math.log10(0.85), 1);
  });
  it('ends with the last sample before re-aiming', () => {
    const aimed = recordOf((t) => (t < knock || t >= at(20, 9) ? 1 : 0.85), { days: 30 });
    const found = theOne(diagnosed(aimed), 'misalignment-step');
    expect([found.end, found.ongoing, found.severity]).toEqual([at(20, 9) - 300_000, false, 'note']);
  });
  it('tells that the sway grew, as it does when aim is lost', () => {
    const swaying = recordOf((t) => left(lobe((t < knock ? 0.15 : 0.5) + 0.1 * heatOfDay(t))), { days: 30 });
    const found = theOne(diagnosed(swaying), 'misalignment-step');
    expect(found.start).toBe(knock);
    expect(measured(found, 'daily sway after over before')).toBeGreaterThan(2);
  });
  it('is less than likely where the reading was set anew', () => {
    const set = siteOf({}, { visits: [{ time: iso(knock), beam: 'B1', work: 'renormalised' }] });
    const fallen = recordOf((t) => (t < knock ? 1.1 : 1), { days: 30 });
    expect(stated(diagnosed(fallen), 'misalignment-step')).toHaveLength(1);
    expect(stated(diagnosed(fallen, set), 'misalignment-step')).toEqual([]);
  });
  describe('slight, and put right some hours later', () => {
    const [from, to] = [at(1, 9), at(1, 12)];
    const aimed = siteOf({}, { visits: [{ time: iso(to), beam: 'B1', work: 'realigned' }] });
    const nudged = (lost: number, edge = 1, site?: typeof aimed) =>
      diagnosed(
        recordOf((t) => 1 - lost * rise(t, from, from + edge) * (1 - rise(t, to - edge, to)), {
          days: 2.5,
          intervalSeconds: 60,
        }),
        site,
      );
    it('is a knock and its end where somebody was there to aim it, neither smoke nor an object in the path', () => {
      const diagnosis = nudged(0.07, 1, aimed);
      const found = theOne(diagnosis, 'misalignment-step');
      expect([found.start, found.end, found.severity]).toEqual([from + 60_000, to - 60_000, 'note']);
      expect(theOne(diagnosis, 'cleaned').start).toBe(to);
      expect([...stated(diagnosis, 'smoke-like'), ...stated(diagnosis, 'obstruction')]).toEqual([]);
    });
    it('is smoke where it grew over some samples', () => {
      expect(stated(nudged(0.07, 8 * 60_000), 'smoke-like')).toHaveLength(1);
      expect(stated(nudged(0.07, 8 * 60_000), 'misalignment-step')).toEqual([]);
    });
    it('is an object in the edge of the path where nobody was', () => {
      const diagnosis = nudged(0.07);
      const found = theOne(diagnosis, 'obstruction');
      expect([found.start, found.end, found.severity]).toEqual([from + 60_000, to - 60_000, 'note']);
      for (const other of ['smoke-like', 'misalignment-step', 'cleaned'] as const)
        expect(stated(diagnosis, other)).toEqual([]);
    });
    it('is an object where it took most of the light', () => {
      expect(stated(nudged(0.6), 'obstruction')).toHaveLength(1);
      expect(stated(nudged(0.6), 'misalignment-step')).toEqual([]);
    });
  });
  it.each(['obstruction', 'cleaned'] as const)('is not stated of %s', (other) =>
    expect(stated(diagnosed(typical[other]()), 'misalignment-step')).toEqual([]),
  );
});
