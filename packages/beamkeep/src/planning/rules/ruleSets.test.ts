import { describe, expect, it } from 'vitest';
import { UsageError } from '../../columns/index.js';
import { figureNamed, withOwnFigures } from './ownFigures.js';
import { figureNames, placeOf } from './ruleSet.js';
import { ruleSetNamed, ruleSets } from './ruleSets.js';

describe('rule sets', () => {
  it('every figure says where it comes from, and whether it was read or remembered', () => {
    for (const { figures } of ruleSets) {
      for (const name of figureNames) {
        const figure = figures[name];
        if (figure === undefined) continue;
        expect(figure.source).toMatch(/\S+\s+\S+/);
        expect(placeOf(figure)).toMatch(/\((read|from memory)\)$/);
      }
    }
  });

  it('BS 5839-1:2017 says that it was replaced in 2025', () => {
    expect(ruleSetNamed('bs5839-1').superseded).toContain('BS 5839-1:2025');
  });

  it("are replaced figure by figure by the user's own, which say what they replaced", () => {
    const rules = withOwnFigures(ruleSetNamed('bs5839-1'), { betweenBeams: 12, hallHeightLeast: 3 });
    expect(rules.figures.betweenBeams).toEqual({
      value: 12,
      unit: 'm',
      source: 'given by the user',
      seen: 'given',
      note: 'in place of 15 m, BS 5839-1:2017, clause 22',
    });
    expect(rules.figures.hallHeightLeast).toEqual({ value: 3, unit: 'm', source: 'given by the user', seen: 'given' });
    expect(rules.figures.toSide).toBe(ruleSetNamed('bs5839-1').figures.toSide);
  });

  it('know the units of figures that a rule set lacks', () => {
    const { figures } = withOwnFigures(ruleSetNamed('own'), {
      apexWidening: 1,
      apexWideningMost: 25,
      lowerRowReach: 12,
    });
    expect([figures.apexWidening?.unit, figures.apexWideningMost?.unit, figures.lowerRowReach?.unit]).toEqual([
      '%/degree',
      '%',
      '%',
    ]);
  });

  it('say what must change', () => {
    expect(() => ruleSetNamed('bs')).toThrow('rule set "bs" is not known: use bs5839-1, nfpa72, gb50116');
    expect(() => figureNamed('between')).toThrow('figure "between" is not known: use betweenBeams');
    expect(figureNamed('toSide')).toBe('toSide');
    expect(() => withOwnFigures(ruleSetNamed('own'), { toSide: -1 })).toThrow(UsageError);
  });
});
