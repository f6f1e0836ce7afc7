import { describe, expect, it } from 'vitest';
import { at, diagnosed, left, measured, recordOf, siteOf, stated, theOne } from '../../../../../tests/diagnosis/kit.js';
import { cleaning, healthy, lobe, typical } from '../../../../../tests/diagnosis/typical.js';

describe('contamination', () => {
  const dirty = diagnosed(typical.contamination());
  const found = theOne(dirty, 'contamination');

  it('is told from first to last sample, with the rate and the loss that were put in', () => {
    expect([found.start, found.end, found.ongoing]).toEqual([dirty.from, dirty.to, true]);
    const gained = 100 * (1 - left(0.6));
    expect(measured(found, 'growth of the loss, as a share of clean air', '%')).toBeCloseTo(gained, -0.5);
    expect(Math.abs(measured(found, 'slope') + gained / 30)).toBeLessThan(0.04);
    expect(measured(found, 'growth of the loss, in decibels', 'dB')).toBeCloseTo(0.6, 1);
    expect(found.severity).toBe('watch');
  });
  it('ends at the cleaning, with the sample before, and is then for the record', () => {
    const one = theOne(diagnosed(typical.cleaned()), 'contamination');
    expect([one.end, one.ongoing, one.severity]).toEqual([cleaning - 300_000, false, 'note']);
  });
  it('begins afresh after a cleaning: one finding a season', () => {
    const rate = (t: number) => 0.03 * ((t - (t < cleaning ? at(0) : cleaning)) / (at(1) - at(0)));
    const seasons = stated(diagnosed(recordOf((t) => left(rate(t)), { days: 42 })), 'contamination');
    expect(seasons.map(({ start }) => start)).toEqual([at(0), cleaning]);
  });
  it('is to be acted upon once the alarm threshold is passed', () => {
    const heavy = recordOf((t) => left((2.4 * (t - at(0))) / (at(40) - at(0))), { days: 40 });
    expect(theOne(diagnosed(heavy), 'contamination').severity).toBe('act');
  });
  it('begins when the loss begins', () => {
    const late = recordOf((t) => left(Math.max(0, 0.03 * ((t - at(25)) / (at(1) - at(0))))), { days: 60 });
    const { start } = theOne(diagnosed(late), 'contamination');
    expect(Math.abs(start - at(25)) / (at(1) - at(0))).toBeLessThan(4);
  });
  it.each(['misalignment-drift', 'condensation'] as const)('is not stated of %s', (other) =>
    expect(stated(diagnosed(typical[other]()), 'contamination')).toEqual([]),
  );
  it('is not stated of a healthy beam, nor of a season that warms the roof', () => {
    expect(stated(diagnosed(healthy()), 'contamination')).toEqual([]);
    const warmth = (t: number) =>
      10 + (12 * (t - at(0))) / (at(45) - at(0)) + 4 * Math.cos(((t / 3.6e6 - 15) / 24) * 2 * Math.PI);
    const season = recordOf((t) => left(lobe(0.3 + 0.012 * (warmth(t) - 10))), { days: 45, temperature: warmth });
    expect(stated(diagnosed(season, siteOf({ temperatureColumn: 't' })), 'contamination')).toEqual([]);
  });
});
