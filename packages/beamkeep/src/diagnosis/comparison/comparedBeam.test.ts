import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { at, diagnosed, hourOf, left, recordOf } from '../../../../../tests/diagnosis/kit.js';
import type { CauseWord } from '../finding.js';
import { beamStanding, type StandingFinding } from './beamStanding.js';
import { changeOf, comparedBeam } from './comparedBeam.js';

/** A day's sway [dB], 0 at night, greatest in the early afternoon. */
const sway = (instant: number, decibels: number): number =>
  decibels * Math.max(0, Math.sin(((hourOf(instant) - 8) / 12) * Math.PI));

/** 20 days before: 2 dB lost on the tenth, 1 dB of sway. 12 days after re-aiming: 0.2 dB, 0.3 dB of sway. */
const before = diagnosed(
  recordOf((instant) => left((instant < at(10) ? 0.2 : 2.2) + sway(instant, 1)), {
    days: 20,
    temperature: (instant) => 10 + sway(instant, 12),
  }),
);
const after = diagnosed(
  recordOf((instant) => left(0.2 + sway(instant, 0.3)), {
    days: 12,
    start: at(20),
    noise: 0.004,
    seed: 2,
    temperature: (instant) => 10 + sway(instant, 12),
  }),
);
const [early, late] = [beamStanding(before, { at: 'end', days: 8 }), beamStanding(after, { at: 'begin', days: 30 })];

describe('beamStanding', () => {
  it('counts the last days before and the first days after, and no others', () => {
    expect([early.byDay.start.length, early.from]).toEqual([8, at(12)]);
    expect([late.byDay.start.length, late.from]).toEqual([12, at(20)]);
    expect(early.alarmDecibels).toBeCloseTo(1.871, 3); // 35 %
    expect([early.stepped, late.stepped]).toEqual([false, false]);
    expect(early.findings.map(({ cause }) => cause)).toContain('misalignment-step');
    expect(beamStanding(before, { at: 'begin', days: 5 }).findings.map(({ cause }) => cause)).not.toContain(
      'misalignment-step',
    );
  });

  it('a step inside the days parts two levels: before a visit those since it count, after one those until it', () => {
    const end = beamStanding(before, { at: 'end', days: 15 });
    expect([end.byDay.start.length, end.from, end.stepped]).toEqual([10, at(10), true]);
    const begin = beamStanding(before, { at: 'begin', days: 15 });
    expect([begin.byDay.start.length, begin.byDay.start[0], begin.stepped]).toEqual([10, at(0), true]);
    expect(Math.max(...begin.byDay.loss)).toBeLessThan(1);
    expect(Math.min(...end.byDay.loss)).toBeGreaterThan(2);
  });

  it('survives JSON and holds nothing where the log holds nothing', () => {
    expect(JSON.parse(JSON.stringify(late))).toEqual(late);
    const empty = beamStanding({ ...before, picture: undefined }, { at: 'end', days: 8 });
    expect(comparedBeam(empty, late)).toMatchObject({ daysBefore: 0, loss: { clear: false, change: Number.NaN } });
  });
});

describe('comparedBeam', () => {
  const compared = comparedBeam(early, late);

  it('tells what was put in: level, margin at the daily low, swing, swing by the kelvin, noise', () => {
    expect(compared.loss.change).toBeCloseTo(-2, 0);
    expect(compared.loss.clear).toBe(true);
    expect(compared.margin.change).toBeGreaterThan(2.5);
    expect(compared.margin.change).toBeLessThan(2.9); // 2 dB of level and 0.7 dB of sway, at its 95th percentile
    expect(compared.swing.before).toBeGreaterThan(0.9);
    expect(compared.swing.change).toBeCloseTo(-0.7, 1);
    expect(compared.swingPerKelvin.after / compared.swingPerKelvin.before).toBeCloseTo(0.3, 1);
    expect(compared.noise.ratio).toBeGreaterThan(3);
    expect(compared.noise.ratio).toBeLessThan(5);
  });

  it('a beam against itself has changed in nothing', () => {
    const same = comparedBeam(late, late);
    for (const each of [same.loss, same.margin, same.swing]) expect(each).toMatchObject({ change: 0, clear: false });
    expect(same.noise.ratio).toBe(1);
  });

  const found = (cause: CauseWord, times: number): StandingFinding => ({
    cause,
    times,
    severity: 'note',
    confidence: 0.8,
  });
  const fates = (was: StandingFinding[], is: StandingFinding[], days = 8) =>
    comparedBeam(
      { ...early, findings: was },
      { ...late, byDay: { ...late.byDay, start: late.byDay.start.slice(0, days) }, findings: is },
    ).findings.map(({ cause, fate }) => `${cause} ${fate}`);

  it('says what stayed, what is new, and what is gone only where it should have come again', () => {
    expect(fates([found('condensation', 2)], [found('condensation', 1), found('vibration', 4)])).toEqual([
      'condensation stayed',
      'vibration new',
    ]);
    expect(fates([found('process-aerosol', 5)], [])).toEqual(['process-aerosol gone']);
    expect(fates([found('process-aerosol', 5)], [], 2)).toEqual(['process-aerosol unseen']);
    expect(fates([found('cleaned', 1)], [found('cleaned', 1)])).toEqual([]);
  });

  it('never says that smoke is gone', () => {
    expect(fates([found('smoke-like', 50)], [])).toEqual(['smoke-like unseen']);
  });
});

describe('changeOf', () => {
  const days = fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 1, maxLength: 25 });

  it('law: turned about, the change and its band change sign', () => {
    fc.assert(
      fc.property(days, days, (a, b) => {
        const [there, back] = [changeOf(a, b), changeOf(b, a)];
        expect(back.change).toBeCloseTo(-there.change, 9);
        expect(back.low).toBeCloseTo(-there.high, 9);
        expect(back.clear).toBe(there.clear);
      }),
      { seed: 11 },
    );
  });

  it('law: the change lies within its band, and what is added to every day is added to it', () => {
    fc.assert(
      fc.property(days, days, fc.double({ min: -3, max: 3, noNaN: true }), (a, b, more) => {
        const one = changeOf(a, b);
        expect(one.change).toBeGreaterThanOrEqual(one.low);
        expect(one.change).toBeLessThanOrEqual(one.high);
        const moved = changeOf(
          a,
          b.map((each) => each + more),
        );
        expect(moved.change).toBeCloseTo(one.change + more, 9);
      }),
      { seed: 11 },
    );
  });

  it('one wild day does not make a change', () => {
    expect(changeOf([1, 1, 1], [1.01, 1.01], 0.05)).toMatchObject({ clear: false });
    expect(changeOf([1, 1.1, 0.9, 1, 1.05], [1, 9, 1.1, 0.95, 1]).clear).toBe(false);
  });
});
