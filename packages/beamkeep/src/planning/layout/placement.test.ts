import { describe, expect, it } from 'vitest';
import { ruleSetNamed } from '../rules/ruleSets.js';
import { breaches } from './placement.js';

describe('breaches', () => {
  it('GB 50116-2013, 6.2.15, examination question: 15 m apart and 0.3 m to the side fail, 1 m below and 12 m high pass', () => {
    const found = breaches(
      { belowCeiling: 1, aboveFloor: 12, betweenBeams: 15, toSide: 0.3, separation: 80 },
      ruleSetNamed('gb50116'),
    );
    expect(found.map(({ what, limit }) => [what, limit])).toEqual([
      ['betweenBeams', 14],
      ['toSide', 0.5],
    ]);
    expect(found[0]?.clause).toContain('6.2.15 (read)');
  });
  it('does not check what is not given, nor what the rules do not name', () => {
    expect(breaches({}, ruleSetNamed('gb50116'))).toEqual([]);
    expect(breaches({ aboveFloor: 1, separation: 500 }, ruleSetNamed('nfpa72'))).toEqual([]);
  });
});
