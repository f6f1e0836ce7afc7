import { describe, expect, it } from 'vitest';
import { minute } from '../../packages/beamkeep/src/columns/index.js';
import { measuredCurves, plainScenario, quietElectronics } from '../../packages/beamkeep/src/simulation/index.js';
import { measuredFile } from './measuredFiles.js';
import { explained, smokeLabelled, smokeLost } from './simulated.js';

/*
 * Smoke as it was measured, in simulated beams: every curve that the simulation labels as smoke at a rate of sampling
 * (meters that saw none are left out) must be told as smoke.
 *
 * Source: Fire Research Division Experimental Database of NIST, repository firemodels/exp, commit 39d8b735: FAA cargo
 * compartments (DOT/FAA/AR-03/49, AR-06/21, AR-07/27), NIST smoke alarms (TN 1455, 2008), NBS one-room test. What was
 * changed is told in the README beside the files.
 */

const files = [
  'faa-cargo-test1',
  'faa-cargo-test2',
  'faa-cargo-test4',
  'nist-sdc02',
  'nist-sdc05',
  'nist-sdc10',
  'nist-sdc33',
  'nist-sdc38',
  'nbs-wall1-stack',
];
/** Sampling [s], and samples of a log: two hours, half a day, four days. */
const rates: readonly (readonly [number, number])[] = [
  [1, 7200],
  [10, 4320],
  [60, 5760],
];
/**
 * Known misses, by file and sampling. `sma_3` flickers by 2 to 6 % for a sample or two at a time.
 */
const known: Readonly<Record<string, readonly string[]>> = {
  'nist-sdc38 1': ['sma_3_od_per_m B1 2027-01-04T00:55:01.000Z'],
};
/** Smoke that the light crosses [m]. */
const metres = 5;

const start = Date.UTC(2027, 0, 4);

describe.each(rates)('measured smoke, a sample each %i s', (intervalSeconds, samples) => {
  it.each(files)('%s is told as smoke', async (file) => {
    let labelled = 0;
    const lost: string[] = [];
    for (const [k, curve] of measuredCurves(measuredFile(file)).entries()) {
      const from = start + 0.4 * samples * intervalSeconds * 1000 + 7 * minute;
      const scenario = plainScenario(
        { start, samples, intervalSeconds },
        {
          electronics: { ...quietElectronics(0.002), wander: 0.001 },
          offset: [0.3, 0],
          effects: [{ effect: 'measured', curve, from, metres, held: 1200, clears: 1800 }],
        },
      );
      const one = await explained(scenario, k + 1);
      labelled += smokeLabelled(one);
      lost.push(...smokeLost(one).map((miss) => `${curve.name} ${miss}`));
    }
    expect(labelled).toBeGreaterThan(0);
    expect(lost).toEqual(known[`${file} ${intervalSeconds}`] ?? []);
  });
});
