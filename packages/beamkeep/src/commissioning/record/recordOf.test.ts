import { describe, expect, it } from 'vitest';
import { aim, covered, gathered, proof, siteOf } from '../../../../../tests/commissioning/answers.js';

describe('recordOf', () => {
  it('keeps of the day what people wrote, and says null where they wrote nothing', () => {
    const impairment = {
      from: '09:30',
      fireWatch: { by: 'staff', from: '09:30' },
      returned: { time: '13:10', by: 'I.' },
    };
    const record = gathered(undefined, undefined, {
      people: [
        { role: 'a', name: 'b' },
        { role: 'c', name: 'd', licence: 'L-1' },
      ],
      impairment,
      deviations: ['one'],
      notDone: ['two'],
      remarks: ['three'],
    });
    expect(record).toMatchObject({
      format: 'beamkeep-record/1',
      made: '2027-01-20T15:00:00.000Z',
      date: '2027-01-20',
      people: [
        { role: 'a', name: 'b', licence: null },
        { role: 'c', name: 'd', licence: 'L-1' },
      ],
      impairment: {
        from: '09:30',
        until: null,
        told: [],
        fireWatch: { by: 'staff', from: '09:30', until: null },
        returned: { time: '13:10', by: 'I.', told: [] },
      },
      deviations: ['one'],
      notDone: ['two'],
      remarks: ['three'],
    });
  });
  it('of a day on which nothing was written down fills nothing in', () =>
    expect(gathered(siteOf({}), {})).toMatchObject({
      people: [],
      impairment: null,
      log: null,
      findings: null,
      deviations: [],
      notDone: [],
      remarks: [],
      beams: [{ id: 'B1', aim: null, covered: null, proof: null }],
    }));
  it('keeps what was told in full', () => {
    const told = [{ who: 'monitoring', time: '09:20' }];
    const impairment = {
      from: '09:30',
      until: '13:10',
      told,
      fireWatch: { by: 'staff', from: '09:30', until: '13:00' },
      returned: { time: '13:10', by: 'I.', told },
    };
    expect(gathered(undefined, undefined, { impairment }).impairment).toEqual(impairment);
    expect(gathered(undefined, undefined, { impairment: { from: '09:30' } }).impairment).toMatchObject({
      fireWatch: null,
      returned: null,
    });
  });
  it('has every beam of the site, with what was measured of it and its own settings', () => {
    const { beams, site } = gathered(siteOf({}, { alarmThreshold: 50, bearing: 90, tilt: -2 }), {
      B1: { aim },
      B2: { covered, proof },
    });
    expect(beams.map((beam) => [beam.id, beam.aim, beam.covered, beam.proof])).toEqual([
      ['B1', aim, null, null],
      ['B2', null, covered, proof],
    ]);
    expect(beams[0]?.settings).toMatchObject({
      bearing: null,
      tilt: null,
      height: 9,
      halfAngle: 0.7,
      cleanAir: 98,
      covered: 3.92,
    });
    expect(beams[1]?.settings).toMatchObject({ alarmThreshold: 50, bearing: 90, tilt: -2 });
    expect(beams[1]?.thresholds.alarm.units.decibels).toBeCloseTo(3.0103, 4);
    expect(site).toEqual({ name: 'Depot', timeZone: 'Europe/Lisbon', latitude: null, longitude: null });
  });
  it('a setting that nobody gave is null, and named where a default stands for it', () => {
    const [bare] = gathered(
      siteOf({ height: undefined, halfAngle: undefined, covered: undefined, alarmDelay: undefined }),
      {},
    ).beams;
    expect(bare?.settings).toMatchObject({ height: null, halfAngle: null, covered: null, alarmDelay: 10 });
    expect(bare?.settings.assumed).toContain('alarmDelay 10 s');
  });
  it('carries every caution and every basis of a number, each with its source', () => {
    const { cautions, bases } = gathered();
    expect(cautions.length).toBeGreaterThan(8);
    expect(cautions.every(({ words, source }) => words !== '' && source !== '')).toBe(true);
    const keys = bases.map(({ key }) => key);
    expect(keys).toEqual(expect.arrayContaining(['setting', 'units', 'lobe', 'margin', 'ratio', 'filter', 'window']));
    const drift = bases.find(({ key }) => key === 'drift');
    expect(drift).toMatchObject({
      seen: 'from memory',
      source: expect.stringMatching(/^40 CFR 60 Appendix B, Performance Specification 1, zero drift \(of smoke-stack/),
    });
    expect(bases.find(({ key }) => key === 'cover')?.source).toMatch(/^own choice: [^(]*$/); // no clause, no note
  });
});
