import { describe, expect, it } from 'vitest';
import {
  at,
  chanceOf,
  diagnosed,
  left,
  measured,
  normalOf,
  recordOf,
  stated,
  theOne,
} from '../../../../../tests/diagnosis/kit.js';
import { typical } from '../../../../../tests/diagnosis/typical.js';
import { minute } from '../../columns/index.js';

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
  it('is no more than possible where one sample alone shows it', () => {
    const blink = (t: number): number => (t >= at(5, 10) && t < at(5, 10) + 5 * minute ? 0.4 : 1);
    const { findings } = diagnosed(recordOf(blink, { days: 10 }));
    const one = findings.find((f) => f.cause === 'obstruction');
    expect(one?.confidence).toBeGreaterThan(0.1);
    expect(one?.confidence).toBeLessThan(0.5);
    // Two samples with sharp edges and a level between them are a statement.
    const twice = (t: number): number => (t >= at(5, 10) && t < at(5, 10) + 10 * minute ? 0.4 : 1);
    expect(stated(diagnosed(recordOf(twice, { days: 10 })), 'obstruction')).toHaveLength(1);
  });
  it('is not stated of a spike of two samples within noise nearly as large', () => {
    const spiky = (t: number): number => {
      if (t < at(4) || t > at(6)) return 1;
      const spike = t >= at(5, 10) && t < at(5, 10) + 10 * minute ? 0.25 : 0;
      return 1 - spike + 0.04 * normalOf(Math.floor(t / minute), 3);
    };
    expect(stated(diagnosed(recordOf(spiky, { days: 10 })), 'obstruction')).toEqual([]);
    const quiet = (t: number): number => (t >= at(5, 10) && t < at(5, 10) + 10 * minute ? 0.75 : 1);
    expect(stated(diagnosed(recordOf(quiet, { days: 10 })), 'obstruction')).toHaveLength(1);
  });
  it('is not stated of the dips of a beam that shakes all the time, and is of one among few', () => {
    // A mount that shakes across the peak only takes light: four minutes of ten, now more, now less.
    const shaken = (t: number, from = at(0), to = at(3)): number => {
      const k = Math.floor(t / (10 * minute));
      return t >= from && t < to && t - 10 * minute * k < 4 * minute ? 0.08 + 0.12 * chanceOf(k, 5) : 0;
    };
    const log = { days: 3, intervalSeconds: 60 };
    expect(stated(diagnosed(recordOf((t) => 1 - shaken(t), log)), 'obstruction')).toEqual([]);
    const once = recordOf((t) => 1 - shaken(t, at(1, 10), at(1, 10) + 10 * minute), log);
    expect(theOne(diagnosed(once), 'obstruction').start).toBe(at(1, 10));
  });
  it('is not stated of smoke that grew to a deep loss and stays', () => {
    const deep = (t: number): number => left(Math.min(8, Math.max(0, (t - at(6, 10)) / minute / 4)));
    const found = diagnosed(recordOf(deep, { days: 10, intervalSeconds: 60 }));
    expect(stated(found, 'smoke-like').length).toBeGreaterThan(0);
    expect(stated(found, 'obstruction')).toEqual([]);
  });
});
