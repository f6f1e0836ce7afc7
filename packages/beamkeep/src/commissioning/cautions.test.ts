import { describe, expect, it } from 'vitest';
import { everyCaution, stageCautions, stages } from './cautions.js';

describe('stageCautions', () => {
  it.each(['aim', 'covered', 'prove'] as const)('%s: monitoring told and work at height, before any test', (stage) => {
    const words = stageCautions(stage)
      .map((caution) => caution.words)
      .join(' ');
    expect(words).toContain('out of service');
    expect(words).toContain('Work at height');
  });
  it('aim: eye safety by the class label', () =>
    expect(stageCautions('aim').some(({ words }) => words.includes('class label'))).toBe(true));
  it('thresholds: who may change one', () => expect(stageCautions('thresholds')[0]?.words).toContain('licence'));
  it('prove: restoration is checked at the end', () =>
    expect(stageCautions('prove').some(({ words }) => words.includes('every beam normal and reset'))).toBe(true));
  it('no stage is without one, and each says where it comes from', () => {
    for (const stage of stages) expect(everyCaution.some((caution) => caution.stage === stage)).toBe(true);
    for (const { source } of everyCaution) expect(source).not.toBe('');
  });
});
