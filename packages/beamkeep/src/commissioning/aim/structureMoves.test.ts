import { describe, expect, it } from 'vitest';
import { structureMoves } from './structureMoves.js';

describe('structureMoves', () => {
  it('judges each way to move against the margin; without a margin it is not known', () => {
    const moves = structureMoves({ spanMetres: 18, heightMetres: 9.4 }, 62, 0.6);
    expect(moves.map(({ verdict }) => verdict)).toEqual(['beyond', 'beyond', 'tight']);
    expect(structureMoves({ spanMetres: 18 }, 62, Number.NaN)[0]?.verdict).toBe('not known');
    expect(structureMoves({}, 62, 0.6)).toEqual([]);
  });
  it.each([
    [{ heightMetres: -9.4 }, 'heightMetres -9.4 must be above 0'],
    [{ spanMetres: 0 }, 'spanMetres 0 must be above 0'],
    [{ lengthMetres: 20, warmingKelvin: Number.NaN }, 'warmingKelvin NaN must be above 0'],
  ])('refuses %j: a negative movement would lie within every margin', (structure, says) =>
    expect(() => structureMoves(structure, 62, 0.6)).toThrow(says),
  );
});
