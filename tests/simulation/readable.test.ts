import { describe, expect, it } from 'vitest';
import { logOfText, readTraces } from '../../packages/beamkeep/src/log/index.js';
import { scenarioAt, simulate } from '../../packages/beamkeep/src/simulation/index.js';
import { parseSite } from '../../packages/beamkeep/src/site/index.js';

/*
 * What the simulation writes, the library reads: other clocks, decimal commas, long form, lost and broken lines
 * included. First and last sample come out at the very instants that the truth names.
 */
describe('a simulated log', () => {
  it('is read as its truth says, whatever its logger does', async () => {
    for (let k = 0; k < 40; k++) {
      const { scenario, seed } = scenarioAt(21, k, { ranges: k % 2 === 0 ? 'weighing' : 'held-out', budget: 2500 });
      const simulation = simulate(scenario, seed);
      const site = parseSite(JSON.stringify(simulation.site));
      const { records } = await readTraces(logOfText([...simulation.lines()].join(''), `log ${k}`), site, {});
      for (const [place, { trace, id }] of records.entries()) {
        const truth = simulation.beams[place]?.truth;
        const rows = trace.time.length;
        expect([k, id, new Date(trace.time[0] ?? 0).toISOString()]).toEqual([k, truth?.id, truth?.from]);
        expect([k, id, new Date(trace.until[rows - 1] ?? 0).toISOString()]).toEqual([k, truth?.id, truth?.to]);
      }
    }
  });
});
