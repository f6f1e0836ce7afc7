import { describe, expect, it } from 'vitest';
import {
  at,
  diagnosed,
  hourOf,
  iso,
  left,
  measured,
  recordOf,
  rise,
  siteOf,
  stated,
  theOne,
} from '../../../../../tests/diagnosis/kit.js';
import { fireBegins, healthy, smoulder, typical } from '../../../../../tests/diagnosis/typical.js';
import { hour, minute } from '../../columns/index.js';

describe('smoke-like', () => {
  it('is told of a smouldering fire from its growth to its clearing: treat as fire', () => {
    const found = theOne(diagnosed(typical['smoke-like']()), 'smoke-like');
    expect(found.start).toBeGreaterThanOrEqual(fireBegins);
    expect(found.start).toBeLessThan(fireBegins + hour);
    expect(found.end).toBeGreaterThan(fireBegins + 2 * hour);
    expect(found.end).toBeLessThan(fireBegins + 6 * hour);
    expect(measured(found, 'greatest obscuration')).toBeCloseTo(100 * (1 - left(2.2)), 0);
    expect([found.severity, found.ongoing]).toEqual(['act', false]);
    expect(found.summary + found.action).toMatch(/treat as fire/i);
  });
  it('is for the plan where it stayed under half the alarm threshold', () => {
    const faint = recordOf((t) => left(0.5 * rise(t, at(11, 20), at(11, 21)) * (1 - rise(t, at(11, 22), at(11, 23)))), {
      days: 12,
    });
    expect(theOne(diagnosed(faint), 'smoke-like').severity).toBe('watch');
  });
  it('is to be acted upon where it lasts to the end', () => {
    const last = recordOf((t) => left(0.5 * rise(t, at(11, 20), at(11, 21))), { days: 12 });
    const open = theOne(diagnosed(last), 'smoke-like');
    expect([open.severity, open.ongoing]).toEqual(['act', true]);
  });
  it('is told of whatever the equipment would call fire, explained or not', () => {
    const dirty = diagnosed(recordOf((t) => left((2.6 * (t - at(0))) / (at(30) - at(0))), { days: 30 }));
    expect(stated(dirty, 'contamination')).toHaveLength(1);
    expect(stated(dirty, 'smoke-like').at(-1)).toMatchObject({ severity: 'act', ongoing: true });
  });
  it('carries the visit that covers it', () => {
    const tested = siteOf(
      {},
      { visits: [{ time: iso(fireBegins - hour), until: iso(fireBegins + 12 * hour), work: 'tested' }] },
    );
    expect(theOne(diagnosed(typical['smoke-like'](), tested), 'smoke-like').during).toBe('tested');
  });
  it('two fires are two episodes', () => {
    const twice = recordOf((t) => left(smoulder(t) + smoulder(t - 30 * hour)), { days: 20 });
    expect(stated(diagnosed(twice), 'smoke-like')).toHaveLength(2);
  });
  it('is told of the odd one out beside a family of another kind', () => {
    const misty = (t: number): number => 0.5 * rise(hourOf(t), 2.5, 5) * (1 - rise(hourOf(t), 6, 8.5));
    const both = recordOf((t) => left(misty(t) + smoulder(t)), { days: 30 });
    const found = diagnosed(both);
    expect(stated(found, 'condensation')).toHaveLength(1);
    expect(stated(found, 'smoke-like')).toHaveLength(1);
  });
  it('is told of flames that grow within a minute, at a second', () => {
    const flames = recordOf(
      (t) => left(6 * rise(t, at(0, 1), at(0, 1) + 40_000) * (1 - rise(t, at(0, 1.5), at(0, 2.2)))),
      { days: 0.2, intervalSeconds: 1 },
    );
    const found = theOne(diagnosed(flames), 'smoke-like');
    expect(Math.abs(found.start - at(0, 1))).toBeLessThan(minute);
    expect(found.severity).toBe('act');
  });
  it.each(['process-aerosol', 'condensation', 'misalignment-step'] as const)(
    'is not told of %s below the alarm threshold',
    (other) => expect(stated(diagnosed(typical[other]()), 'smoke-like')).toEqual([]),
  );
  it('is not told of a healthy beam', () => {
    expect(stated(diagnosed(healthy()), 'smoke-like')).toEqual([]);
  });
});
