import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BudgetQuestion, lossBudget } from './lossBudget.js';

const question: BudgetQuestion = {
  optics: { divergenceDegrees: 1.2, receiverMetres: 0.03, reflector: { diameterMetres: 0.2, spreadDegrees: 0.4 } },
  separation: 62,
  nearest: 8,
  farthest: 100,
  halfAngle: 0.5,
  aimOffset: 0,
  movement: 0,
  dirtPercent: 0,
  alarmThreshold: 35,
};

describe('lossBudget', () => {
  it('with 20 % dirt, 18.8 % of smoke alarms at 35 %', () => {
    expect(lossBudget({ ...question, dirtPercent: 20 }).smokeToAlarm).toBeCloseTo(18.75, 10);
  });

  it('movement costs much more on the flank than at the peak, and it says so', () => {
    const peak = lossBudget({ ...question, movement: 0.15 });
    const flank = lossBudget({ ...question, movement: 0.15, aimOffset: 0.2 });
    const structure = (budget: typeof peak) => budget.alarm.parts.find(({ part }) => part === 'structure')?.decibels;
    expect(structure(peak)).toBeCloseTo(3.0103 * 0.09, 4);
    expect(structure(flank)).toBeCloseTo(3.0103 * (0.49 - 0.16), 4);
    expect(flank.warnings.join()).toContain('Aimed at the peak the same movement would cost 0.27 dB');
  });

  it('law: the parts add up to the budgets', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 8, max: 100, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 60, noNaN: true }),
        (separation, aimOffset, movement, dirtPercent) => {
          const { light, alarm } = lossBudget({ ...question, separation, aimOffset, movement, dirtPercent });
          for (const { decibels, parts } of [light, alarm]) {
            expect(parts.reduce((sum, part) => sum + part.decibels, 0)).toBeCloseTo(decibels, 9);
          }
        },
      ),
      { seed: 5 },
    );
  });

  it('at the farthest range nothing is left of the light', () => {
    const { light } = lossBudget({ ...question, separation: 100 });
    expect(light.parts.at(-1)?.decibels).toBeCloseTo(0, 12);
  });

  it('warns where the light is overdrawn, where no smoke is needed, and beyond the half-angle', () => {
    const told = lossBudget({ ...question, separation: 100, aimOffset: 0.3, movement: 0.4, dirtPercent: 30 });
    expect(told.smokeToAlarm).toBe(0);
    expect(told.warnings.join('\n')).toMatch(/overdrawn[\s\S]*without smoke[\s\S]*beyond the half-angle/);
  });

  it('always says what it leaves out and who decides', () => {
    expect(lossBudget(question).leftOut.length).toBeGreaterThan(1);
    expect(lossBudget(question).decides).toContain('licensed people');
  });

  it('says what must change', () => {
    const ask = (change: Partial<BudgetQuestion>) => () => lossBudget({ ...question, ...change });
    expect(ask({ separation: 120 })).toThrow("separation 120 m lies outside the maker's range, 8 to 100 m");
    expect(ask({ farthest: 5 })).toThrow("nearest 8 m and farthest 5 m: the maker's range must rise");
    expect(ask({ aimOffset: -1 })).toThrow('aimOffset -1 degrees');
    expect(ask({ movement: -1 })).toThrow('movement -1 degrees');
    expect(ask({ dirtPercent: 100 })).toThrow('dirtPercent 100');
    expect(ask({ alarmThreshold: 0 })).toThrow('alarmThreshold 0 %');
    expect(ask({ halfAngle: 0 })).toThrow('half-angle');
  });
});
