import { describe, expect, it } from 'vitest';
import { plan } from './plan.js';

describe('plan', () => {
  it('answers from a hall and the word of a rule set, with both drawings', () => {
    const answer = plan({ length: 62, width: 40, height: 12, ruleSet: 'bs5839-1' });
    expect(answer.plan.format).toBe('beamkeep-plan/1');
    expect(answer.plan.beams).toHaveLength(3);
    expect(answer.drawings.plan).toContain('<svg');
    expect(answer.drawings.section).toContain('<svg');
    expect(JSON.parse(JSON.stringify(answer.plan))).toEqual(answer.plan);
  });
  it("takes the user's figures, a pitched roof and warm air", () => {
    const { plan: laid } = plan({
      length: 62,
      width: 40,
      height: 9,
      roof: { shape: 'pitched', apex: 15 },
      ruleSet: 'own',
      overrides: { betweenBeams: 12, toSide: 6 },
      belowCeiling: 0.4,
      lowerRows: [6],
      air: { gradient: 1, convectiveHeat: 10 },
    });
    expect(laid.rows.some(({ level }) => level === 'lower')).toBe(true);
    expect(laid.warnings.some(({ words }) => words.includes('smoke of 10 kW'))).toBe(true);
  });
  it('says what must change', () => {
    expect(() => plan({ length: 0, width: 40, height: 12, ruleSet: 'own' })).toThrow('length 0 m');
    expect(() => plan({ length: 10, width: 40, height: 12, ruleSet: 'local' })).toThrow('rule set "local"');
  });
});
