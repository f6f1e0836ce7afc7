import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ruleSetNamed } from '../rules/ruleSets.js';
import type { PlannedHall } from './hall.js';
import { layBeams } from './layBeams.js';
import type { PlanQuestion } from './plan.js';

const hall: PlannedHall = { length: 62, width: 40, height: 12, roof: { shape: 'flat' } };
const ask = (change: Partial<PlanQuestion> = {}, id = 'bs5839-1') =>
  layBeams({ hall, rules: ruleSetNamed(id), ...change });
const words = (question: Partial<PlanQuestion>, id?: string): string =>
  ask(question, id)
    .warnings.map((warning) => `${warning.words} [${warning.clause ?? ''}]`)
    .join('\n');

describe('layBeams', () => {
  it('lays three rows in a hall of 40 m, in the middle of what may lie below the ceiling', () => {
    const { rows, beams, betweenRows, toSide, farthest, clearRadius } = ask();
    expect(rows.map(({ id, across, height }) => [id, across, height])).toEqual([
      ['R1', 40 / 6, 12 - 0.3125],
      ['R2', 20, 12 - 0.3125],
      ['R3', (5 * 40) / 6, 12 - 0.3125],
    ]);
    expect(beams).toHaveLength(3);
    expect(beams[0]).toMatchObject({ id: 'R1', separation: 62 });
    expect(betweenRows).toBeCloseTo(40 / 3, 10);
    expect(toSide).toBeCloseTo(40 / 6, 10);
    expect(farthest).toBeCloseTo(40 / 6, 10);
    expect(clearRadius).toBe(0.5);
  });

  it('says that BS 5839-1:2017 was replaced, and which figures are from memory', () => {
    expect(words({})).toContain('BS 5839-1:2025');
    expect(words({})).toMatch(/From memory, to be checked.*: greatest distance between two beams side by side; /);
  });

  it('puts several beams in a row of a hall that is longer than a beam may be', () => {
    const { beams } = ask({ hall: { ...hall, length: 210 } });
    expect(beams).toHaveLength(9);
    expect(beams.slice(0, 3).map(({ id, separation }) => [id, separation])).toEqual([
      ['R1.1', 70],
      ['R1.2', 70],
      ['R1.3', 70],
    ]);
    expect(words({ hall: { ...hall, length: 210 } })).toContain('3 beams in every row');
  });

  it('follows a pitched roof, with a row in the apex', () => {
    const { rows } = ask({ hall: { ...hall, height: 8, roof: { shape: 'pitched', apex: 14 } } });
    const apex = rows.find(({ across }) => across === 20);
    expect(apex?.height).toBeCloseTo(14 - 0.3125, 10);
    for (const { belowCeiling } of rows) expect(belowCeiling).toBeCloseTo(0.3125, 10);
  });

  it('GB 50116, 12.4.3 (from memory): lower rows from 12 m, two of them from 16 m, none right below another', () => {
    expect(ask({ hall: { ...hall, height: 11 } }, 'gb50116').rows.every(({ level }) => level === 'roof')).toBe(true);
    const one = ask({ hall: { ...hall, height: 14 } }, 'gb50116').rows.filter(({ level }) => level === 'lower');
    expect(new Set(one.map(({ height }) => height))).toEqual(new Set([6.5]));
    expect(one).toHaveLength(4);
    const two = ask({ hall: { ...hall, height: 18 } }, 'gb50116').rows;
    expect(new Set(two.filter(({ level }) => level === 'lower').map(({ height }) => height))).toEqual(
      new Set([11.5, 6.5]),
    );
    expect(words({ hall: { ...hall, height: 18 } }, 'gb50116')).toContain('lower rows are asked for');
  });

  it('puts lower rows where the user wants them, as close as the rule set asks for a plume', () => {
    const lower = ask({ lowerRows: [8] }).rows.filter(({ level }) => level === 'lower');
    // BS 5839-1, clause 22 (from memory): 12.5 % of the height to either side, 2 m between beams of a row at 8 m.
    expect(lower.length).toBeGreaterThanOrEqual(20);
    expect(lower[0]?.id).toBe('L-1');
  });

  it('warns by clause where the hall or a wish leaves the rules', () => {
    expect(words({ hall: { ...hall, height: 30 } })).toContain('only a beam that responds at 35 % or less');
    expect(words({ hall: { ...hall, height: 45 } })).toContain('these rules end at 40 m');
    expect(words({ belowCeiling: 1 })).toContain('1 m below the ceiling is more than 0.6 m.');
    expect(words({ belowCeiling: 0 })).toContain('0 m below the ceiling is less than 0.025 m.');
    expect(words({ hall: { ...hall, height: 25 } }, 'gb50116')).toContain('above the 20 m of these rules');
    expect(words({ hall: { ...hall, height: 8 } }, 'tariff-advisory')).toContain(
      'these rules speak of beams from 10 m',
    );
    expect(words({ hall: { ...hall, width: 0.8 } }, 'gb50116')).toContain('0.4 m from a side wall, less than 0.5 m');
    expect(words({ hall: { ...hall, length: 0.6 } })).toContain('shorter than the standard');
    expect(words({ hall: { ...hall, height: 2.9 }, belowCeiling: 0.5 })).toContain('below 2.7 m');
    expect(words({}, 'nfpa72')).toContain("the maker's instructions do");
  });

  it('tells where warm air stops the smoke, and how close lower beams must stand to meet the plume', () => {
    const air = { gradient: 1, convectiveHeat: 20 };
    expect(words({ hall: { ...hall, height: 20 }, air })).toContain('the smoke of 20 kW stops at 11.72 m');
    expect(words({ hall: { ...hall, height: 20 }, air })).toContain('A row at 10 m would meet its plume');
    expect(words({ hall: { ...hall, height: 20 }, air, lowerRows: [8] })).toContain('The rows at 8 m stand below');
    expect(words({ hall: { ...hall, height: 20 }, air: { roofRise: 10, convectiveHeat: 20 } })).toContain(
      'gives 60 kW',
    );
    expect(words({ air: { convectiveHeat: 20 } })).not.toContain('smoke of 20 kW');
  });

  it('uses what the user gives in place of a figure', () => {
    expect(ask({ own: { betweenBeams: 9, toSide: 4.5 } }).rows).toHaveLength(5);
    expect(ask({ own: { betweenBeams: 10 } }, 'own').rows).toHaveLength(4);
    expect(ask({ own: { betweenBeams: 9 } }).ruleSet.figures.find(({ name }) => name === 'betweenBeams')?.seen).toBe(
      'given',
    );
  });

  it('always says what it leaves out and who decides', () => {
    expect(ask().leftOut.length).toBeGreaterThan(2);
    expect(ask().decides).toContain('licensed people');
  });

  it('says what must change', () => {
    expect(() => ask({}, 'own')).toThrow('rule set own names no distance between beams: give betweenBeams');
    expect(() => ask({ own: { toSide: 0 } })).toThrow('figure toSide is 0 m');
    expect(() => ask({ belowCeiling: -1 })).toThrow('belowCeiling -1 m');
    expect(() => ask({ belowCeiling: 12 })).toThrow('row R1 would be 0 m above the floor');
    expect(() => ask({ lowerRows: [13] })).toThrow('row L-1 would be 13 m above the floor');
  });

  it('law: every beam lies inside the hall, and every row keeps its distances', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 150, noNaN: true }),
        fc.double({ min: 3, max: 80, noNaN: true }),
        fc.double({ min: 4, max: 24, noNaN: true }),
        fc.boolean(),
        (length, width, height, pitched) => {
          const roof = pitched
            ? ({ shape: 'pitched', apex: height + width / 6 } as const)
            : ({ shape: 'flat' } as const);
          const laid = ask({ hall: { length, width, height, roof } });
          for (const { from, to, separation } of laid.beams) {
            expect(separation).toBeLessThanOrEqual(100 + 1e-9);
            for (const [x, y, z] of [from, to]) {
              expect(x).toBeGreaterThanOrEqual(0);
              expect(x).toBeLessThanOrEqual(length + 1e-9);
              expect(y).toBeGreaterThan(0);
              expect(y).toBeLessThan(width);
              expect(z).toBeGreaterThan(0);
            }
          }
          expect(laid.toSide).toBeLessThanOrEqual((pitched ? 7.5 * 1.25 : 7.5) + 1e-9);
        },
      ),
      { seed: 5 },
    );
  });
});
