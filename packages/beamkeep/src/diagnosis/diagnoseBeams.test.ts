import { describe, expect, it } from 'vitest';
import { at, diagnosed, left, recordOf, siteOf } from '../../../../tests/diagnosis/kit.js';
import { dust, typical } from '../../../../tests/diagnosis/typical.js';
import { type BeamRecord, day } from '../columns/index.js';
import { parseSite } from '../site/index.js';
import { type BeamDiagnosis, diagnoseBeams } from './diagnoseBeams.js';
import type { CauseWord } from './finding.js';

describe('diagnoseBeams', () => {
  it('tells findings in order of their start, and the usable samples', () => {
    const diagnosis = diagnosed(typical.cleaned());
    expect(diagnosis.samples).toBe(30 * 288);
    const starts = diagnosis.findings.map(({ start }) => start);
    expect(starts).toEqual([...starts].sort((a, b) => a - b));
  });
  it('finds nothing in a record without a sample', () =>
    expect(diagnosed(recordOf(() => Number.NaN, { days: 1 }))).toMatchObject({
      samples: 0,
      findings: [],
      picture: undefined,
    }));
  it.each([1, 2, 5, 30])('bears a record of %i samples', (rows) =>
    expect(diagnosed(recordOf(() => 1, { days: rows / 288 })).samples).toBe(rows),
  );
  it('refuses a record of no beam of the site', () =>
    expect(() => diagnoseBeams([{ ...typical.cleaned(), id: 'B9' }], siteOf())).toThrow('B9'));
  it('says nothing below a tenth, but smoke at any confidence', () => {
    for (const { cause, confidence } of diagnosed(typical.obstruction()).findings)
      expect(confidence >= 0.1 || cause === 'smoke-like').toBe(true);
  });
});

describe('beams of one hall', () => {
  const hall = (...records: BeamRecord[]): BeamDiagnosis[] => {
    const beams = records.map((_, k) => ({ id: `B${k + 1}`, layout: 'reflective', separation: 50 }));
    return diagnoseBeams(
      records.map((record, k) => ({ ...record, id: `B${k + 1}` })),
      parseSite({ format: 'beamkeep-site/1', beams }),
    );
  };
  const surest = (told: BeamDiagnosis | undefined, cause: CauseWord): number =>
    Math.max(0, ...(told?.findings ?? []).filter((f) => f.cause === cause).map(({ confidence }) => confidence));
  const clear = recordOf(() => 1, { days: 30 });
  /** Dust so slight, on so few days, that it may be chance. */
  const slight = recordOf((t) => (t < at(3) ? left(0.15 * dust(t)) : 1), { days: 30, seed: 2 });

  it('a cause that comes over the hall is likelier where another beam shows it, and less likely where none does', () => {
    const alone = surest(hall(slight)[0], 'process-aerosol');
    expect(surest(hall(slight, typical['process-aerosol']())[0], 'process-aerosol')).toBeGreaterThan(alone + 0.05);
    expect(surest(hall(slight, clear)[0], 'process-aerosol')).toBeLessThan(alone - 0.01);
  });
  it('says what the other beams counted for, where there were any', () => {
    const measures = (...records: BeamRecord[]) =>
      Object.fromEntries(
        (hall(...records)[0]?.findings ?? []).flatMap(({ evidence }) => evidence.map((e) => [e.measure, e.value])),
      );
    const same = 'how clearly another beam shows the same then, 0 to 1';
    expect(measures(typical.condensation())).not.toHaveProperty([same]);
    expect(measures(typical.condensation(), clear)).toHaveProperty([same], 0);
    expect(measures(typical.condensation(), typical.condensation())[same]).toBeGreaterThan(0.5);
    expect(measures(typical['misalignment-step'](), clear)).not.toHaveProperty([same]);
  });
  it('dirt is doubted where the other beams stay clean, and no likelier where one soils as clearly as can be', () => {
    const soils = recordOf((t) => left((0.35 * (t - at(0))) / (60 * day)), { days: 60 });
    const stays = recordOf(() => 1, { days: 60 });
    const alone = surest(hall(soils)[0], 'contamination');
    const beside = hall(soils, stays)[0];
    expect(surest(beside, 'contamination')).toBeLessThan(alone - 0.1);
    expect(surest(hall(soils, soils)[0], 'contamination')).toBeLessThanOrEqual(alone);
    expect(beside?.findings[0]?.evidence.at(-1)).toEqual({
      measure: 'how clearly another beam shows the same then, 0 to 1',
      value: 0,
      unit: '',
    });
  });
  it('a knock is as likely whatever stands beside it', () => {
    const alone = surest(hall(typical['misalignment-step']())[0], 'misalignment-step');
    for (const other of [clear, typical['misalignment-step'](), typical.contamination()])
      expect(surest(hall(typical['misalignment-step'](), other)[0], 'misalignment-step')).toBe(alone);
  });
  it('law: what is told of smoke does not ask what stands beside it', () => {
    const smoke = (told: BeamDiagnosis | undefined) => told?.findings.filter(({ cause }) => cause === 'smoke-like');
    for (const cause of ['smoke-like', 'process-aerosol', 'condensation'] as const) {
      const alone = smoke(hall(typical[cause]())[0]);
      for (const other of [clear, typical['smoke-like'](), typical['process-aerosol'](), typical.condensation()])
        expect(smoke(hall(typical[cause](), other)[0])).toEqual(alone);
    }
  });
  it('law: the order of the beams changes nothing', () => {
    const records = [slight, clear, typical.condensation()];
    const told = hall(...records).map(({ findings }) => findings);
    expect(hall(...[...records].reverse()).map(({ findings }) => findings)).toEqual([...told].reverse());
  });
});
