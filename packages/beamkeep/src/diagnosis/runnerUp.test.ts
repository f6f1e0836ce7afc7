import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { causeWords } from './finding.js';
import { type Rival, runnerUp } from './runnerUp.js';

const finding = (cause: Rival['cause'], start: number, end: number, confidence: number, more: object = {}): Rival => ({
  cause,
  start,
  end,
  confidence,
  ...more,
});

describe('runnerUp', () => {
  const dirt = finding('contamination', 0, 100, 0.8);
  it('is what looks alike, lies at the same time and is less sure', () => {
    const drift = finding('misalignment-drift', 50, 100, 0.2);
    const others = [dirt, drift, finding('data-gap', 10, 20, 0.98), finding('building-movement', 0, 100, 0.95)];
    expect(runnerUp(dirt, others)).toMatchObject({ finding: drift, meets: true });
  });
  it('meets a recurring cause only when that came', () => {
    const movement = finding('building-movement', 0, 100, 0.5, {
      episodes: [
        [0, 10],
        [90, 100],
      ],
    });
    expect(runnerUp(finding('condensation', 40, 60, 0.9), [movement])?.meets).toBe(false);
    expect(runnerUp(finding('condensation', 60, 95, 0.9), [movement])).toMatchObject({
      finding: movement,
      meets: true,
    });
  });
  it('is what was found at another time where nothing lies at the same', () => {
    const smoke = finding('smoke-like', 0, 10, 0.85);
    const dust = finding('process-aerosol', 50, 60, 0.97);
    expect(runnerUp(smoke, [smoke, dust])).toMatchObject({ finding: dust, meets: false });
  });
  it('is what it is most often mistaken for where nothing was found', () => {
    const second = runnerUp(dirt, [dirt]);
    expect(second).not.toHaveProperty('finding');
    expect(second?.parting.pair).toEqual(['contamination', 'misalignment-drift']);
  });
  it('is smoke wherever smoke lies at the same time, sure or not', () => {
    const block = finding('obstruction', 0, 10, 0.6);
    const others = [finding('misalignment-step', 0, 10, 0.5), finding('smoke-like', 5, 8, 0.85)];
    expect(runnerUp(block, others)?.finding?.cause).toBe('smoke-like');
    expect(runnerUp(block, [finding('smoke-like', 5, 8, 0.03)])?.finding?.cause).toBe('smoke-like');
  });
  it('law: its parting holds both causes', () => {
    const any = fc.record({
      cause: fc.constantFrom(...causeWords),
      start: fc.integer({ min: 0, max: 50 }),
      confidence: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(any, fc.array(any), (one, others) => {
        const long = <T extends { readonly start: number }>(f: T) => ({ ...f, end: f.start + 20 });
        const second = runnerUp(long(one), others.map(long));
        expect(second?.parting.pair).toContain(one.cause);
        if (second?.finding !== undefined) expect(second.parting.pair).toContain(second.finding.cause);
      }),
      { seed: 7 },
    );
  });
});
