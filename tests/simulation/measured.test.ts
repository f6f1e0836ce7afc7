import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { curveLoss, curveScenario, measuredCurves, simulate } from '../../packages/beamkeep/src/simulation/index.js';

const curves = (name: string) =>
  measuredCurves(readFileSync(fileURLToPath(new URL(`../../datasets/measured/${name}.csv`, import.meta.url)), 'utf8'));

/** Seconds in which a curve goes from one obscuration to another over so many metres, each reached for the first time. */
function between(name: string, column: string, metres: number, low: number, high: number): number {
  const curve = curves(name).find((one) => one.name === column);
  if (!curve) throw new Error(`no ${column}`);
  const loss = curveLoss(curve, metres);
  const reached = (share: number) => curve.seconds.find((at) => 1 - 10 ** (-loss(at) / 10) >= share) ?? Number.NaN;
  return reached(high) - reached(low);
}

describe('measured smoke', () => {
  it('has the curves that its page says', () => {
    const counts = ['faa-cargo-test1', 'faa-cargo-test2', 'faa-cargo-test4'].map((name) => curves(name).length);
    expect(counts).toEqual([6, 6, 4]);
    const meters = ['nist-sdc02', 'nist-sdc05', 'nist-sdc10', 'nist-sdc33', 'nist-sdc38'].map(
      (name) => curves(name).length,
    );
    expect(Math.min(...meters)).toBeGreaterThanOrEqual(11);
    expect(Math.max(...meters)).toBeLessThanOrEqual(15);
    expect(curves('nbs-wall1-stack').length).toBe(1);
  });

  it('takes a beam with 10 m of smoke from 10 to 90 % in no less than 14.1 s (FAA cargo compartment beams)', () => {
    const times = ['faa-cargo-test1', 'faa-cargo-test2', 'faa-cargo-test4'].flatMap((name) =>
      curves(name).map((curve) => between(name, curve.name, 10, 0.1, 0.9)),
    );
    const quickest = Math.min(...times.filter((seconds) => !Number.isNaN(seconds)));
    expect(quickest).toBeGreaterThanOrEqual(14);
    expect(quickest).toBeLessThan(16);
  });

  it('is labelled as smoke in simulated beams, at 1 s, 10 s and a minute', () => {
    for (const name of ['faa-cargo-test1', 'faa-cargo-test4', 'nist-sdc02']) {
      const [curve] = curves(name);
      if (!curve) throw new Error(`no curve in ${name}`);
      for (const intervalSeconds of [1, 10, 60]) {
        const scenario = curveScenario(curve, 3, { metres: 5, intervalSeconds, ranges: 'held-out' });
        const causes = simulate(scenario, 3).beams[0]?.truth.causes.map(({ cause }) => cause);
        expect([name, intervalSeconds, causes]).toEqual([
          name,
          intervalSeconds,
          expect.arrayContaining(['smoke-like']),
        ]);
      }
    }
  });
});
