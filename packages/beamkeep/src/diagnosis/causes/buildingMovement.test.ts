import { describe, expect, it } from 'vitest';
import {
  at,
  chanceOf,
  dayOf,
  diagnosed,
  hourOf,
  left,
  measured,
  recordOf,
  siteOf,
  stated,
  theOne,
} from '../../../../../tests/diagnosis/kit.js';
import { healthy, heatOfDay, lobe, typical } from '../../../../../tests/diagnosis/typical.js';

describe('building-movement', () => {
  it('is told over all days, with their swing', () => {
    const diagnosis = diagnosed(typical['building-movement']());
    const found = theOne(diagnosis, 'building-movement');
    expect([found.start, found.end, found.ongoing, found.severity]).toEqual([
      diagnosis.from,
      diagnosis.to,
      true,
      'note',
    ]);
    expect(found.episodes).toHaveLength(30);
    const swing = (day: number): number => {
      const amplitude = (0.6 + 0.4 * chanceOf(day, 7)) * 0.12;
      return 100 * (left(lobe(0.5 - amplitude)) - left(lobe(0.5 + amplitude)));
    };
    const days = Array.from({ length: 30 }, (_, d) => swing(d)).sort((a, b) => a - b);
    expect(Math.abs(measured(found, 'swing of a day, median') - (days[15] ?? 0))).toBeLessThan(1.5);
  });
  it('with the temperature tells offset and movement in half-angles, degrees and millimetres', () => {
    const warmth = (t: number): number => 15 + 8 * heatOfDay(t);
    const record = recordOf((t) => left(lobe(0.6 + 0.02 * (warmth(t - 7.2e6) - 15))), {
      days: 30,
      temperature: warmth,
    });
    const found = theOne(diagnosed(record, siteOf({ temperatureColumn: 't', halfAngle: 0.7 })), 'building-movement');
    expect(measured(found, 'lag behind the temperature')).toBeCloseTo(2, 0);
    const offset = measured(found, 'offset of the aim', 'of the half-angle');
    expect(offset).toBeGreaterThanOrEqual(measured(found, 'offset of the aim, 90 % limits from'));
    expect(offset).toBeLessThanOrEqual(measured(found, 'offset of the aim, 90 % limits to'));
    expect(Math.abs(offset - 0.6)).toBeLessThan(0.06);
    expect(measured(found, 'offset of the aim, as an angle', 'degrees')).toBeCloseTo(0.7 * offset, 3);
    expect(
      measured(found, 'offset of the aim at the far end') / (50_000 * Math.tan((0.7 * offset * Math.PI) / 180)),
    ).toBeCloseTo(1, 3);
  });
  it('knows two dips a day, when the aim is centred', () => {
    const centred = recordOf((t) => left(lobe(0.28 * heatOfDay(t))), { days: 30 });
    expect(stated(diagnosed(centred), 'building-movement')).toHaveLength(1);
  });
  it('knows a structure under a load', () => {
    const loaded = (t: number): boolean =>
      dayOf(t) % 7 < 5 &&
      [9, 11, 13.5].some((h) => hourOf(t) >= h + chanceOf(dayOf(t), h) && hourOf(t) < h + chanceOf(dayOf(t), h) + 0.7);
    const crane = recordOf((t) => (loaded(t) ? 0.88 : 1), { days: 30, intervalSeconds: 60 });
    const [found] = stated(diagnosed(crane), 'building-movement');
    expect(found && measured(found, 'depth of the step, median')).toBeCloseTo(12, 0);
  });
  it('knows a load that brings the aim nearer to its peak, at any hour and size, from lamps', () => {
    const crane = (t: number): number =>
      dayOf(t) % 7 < 5
        ? Math.max(
            ...[8, 10.5, 13].map((h) => {
              const begin = h + 2 * chanceOf(dayOf(t), h);
              return hourOf(t) >= begin && hourOf(t) < begin + 0.7 ? 0.05 + 0.1 * chanceOf(dayOf(t), h + 0.5) : 0;
            }),
          )
        : 0;
    const lifted = diagnosed(recordOf((t) => 0.9 + crane(t), { days: 30, intervalSeconds: 60 }));
    const [found] = stated(lifted, 'building-movement');
    expect(found?.summary).toMatch(/^The level steps up by 1\d(\.\d)? % and down again/);
    expect(stated(lifted, 'ambient-light')).toEqual([]);
    const litBy = (begin: (t: number) => number, adds: (t: number) => number) => (t: number) =>
      0.9 + (dayOf(t) % 7 < 5 && hourOf(t) >= begin(t) && hourOf(t) < begin(t) + 1 ? adds(t) : 0);
    const anyHour = (t: number): number => 9 + 4 * chanceOf(dayOf(t), 3);
    const anySize = (t: number): number => 0.06 + 0.06 * chanceOf(dayOf(t), 4);
    const lamps = [
      litBy(
        () => 9,
        () => 0.1,
      ),
      litBy(() => 9, anySize),
      litBy(anyHour, () => 0.1),
    ];
    for (const lamp of lamps)
      expect(stated(diagnosed(recordOf(lamp, { days: 30, intervalSeconds: 60 })), 'building-movement')).toEqual([]);
    const load = litBy(anyHour, anySize);
    expect(stated(diagnosed(recordOf(load, { days: 30, intervalSeconds: 60 })), 'building-movement')).toHaveLength(1);
  });
  it('knows a load amid noise a quarter of its step, and on a scale as coarse as a fifth of it', () => {
    const loaded = (t: number): boolean =>
      dayOf(t) % 7 < 5 &&
      [9, 11, 13.5].some((h) => hourOf(t) >= h + chanceOf(dayOf(t), h) && hourOf(t) < h + chanceOf(dayOf(t), h) + 0.9);
    const coarse = recordOf((t) => (loaded(t) ? 0.953 : 1), {
      days: 30,
      intervalSeconds: 300,
      noise: 0.003,
      quantum: 0.01,
    });
    expect(stated(diagnosed(coarse), 'building-movement').length).toBeGreaterThan(0);
    expect(stated(diagnosed(coarse), 'process-aerosol')).toEqual([]);
    const noisy = recordOf((t) => (loaded(t) ? 0.94 : 1), { days: 30, intervalSeconds: 300, noise: 0.012 });
    expect(stated(diagnosed(noisy), 'building-movement').length).toBeGreaterThan(0);
  });
  it.each(['condensation', 'ambient-light'] as const)('is not stated of %s', (other) =>
    expect(stated(diagnosed(typical[other]()), 'building-movement')).toEqual([]),
  );
  it('is not stated of a healthy beam, nor of a harmless sway', () => {
    expect(stated(diagnosed(healthy()), 'building-movement')).toEqual([]);
    const little = recordOf((t) => left(lobe(0.3 + 0.01 * heatOfDay(t))), { days: 30, start: at(0) });
    expect(stated(diagnosed(little), 'building-movement')).toEqual([]);
  });
});
