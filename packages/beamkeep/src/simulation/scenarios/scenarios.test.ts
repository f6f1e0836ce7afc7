import { describe, expect, it } from 'vitest';
import { parseSite } from '../../site/index.js';
import { simulate } from '../simulate.js';
import { scenarioAt, scenarios } from './scenarios.js';

const some = (ranges: 'weighing' | 'held-out', count: number) =>
  Array.from({ length: count }, (_, k) => scenarioAt(11, k, { ranges, budget: 3000 }));

describe('scenarios', () => {
  it('are the same again from the same seed, one by one or in a row', () => {
    const row = scenarios(11, { ranges: 'weighing', budget: 3000 });
    for (const one of some('weighing', 5)) expect(row.next().value).toEqual(one);
  });

  it('draw other places for the held-out set', () => {
    const zones = (ranges: 'weighing' | 'held-out') =>
      new Set(some(ranges, 60).map(({ scenario }) => scenario.timeZone));
    const held = zones('held-out');
    expect([...zones('weighing')].filter((zone) => held.has(zone))).toEqual([]);
  });

  it('keep to the kinds asked for, and ask nothing of most healthy beams', () => {
    const healthy = Array.from({ length: 6 }, (_, k) =>
      scenarioAt(3, k, { ranges: 'held-out', kinds: [['healthy', 1]], budget: 3000 }),
    );
    const beams = healthy.flatMap(({ scenario, seed }) => simulate(scenario, seed).beams);
    expect(beams.filter(({ truth }) => truth.causes.length === 0).length).toBeGreaterThan(0.8 * beams.length);
  });

  it('law: lines that are lost are a gap of every beam', () => {
    const logs = [...some('weighing', 60), ...some('held-out', 60)].map(({ scenario, seed }) =>
      simulate(scenario, seed),
    );
    const gaps = logs.map(({ beams }) =>
      beams.map(({ truth }) => truth.causes.filter(({ how }) => how === 'lines').length),
    );
    expect(gaps.filter(([first, ...others]) => others.some((count) => count !== first))).toEqual([]);
    expect(gaps.filter(([first]) => first !== 0).length).toBeGreaterThan(0);
  });

  it('law: every drawn log has a site file that can be read, and labels within it', () => {
    for (const { scenario, seed } of [...some('weighing', 25), ...some('held-out', 25)]) {
      const simulation = simulate(scenario, seed);
      const site = parseSite(JSON.stringify(simulation.site));
      expect(site.beams.map(({ id }) => id)).toEqual(simulation.beams.map(({ id }) => id));
      for (const { truth, reading } of simulation.beams) {
        expect(reading.length).toBe(scenario.samples);
        for (const { start, end, magnitude, episodes = [] } of truth.causes) {
          expect(start >= truth.from && end <= truth.to && start <= end).toBe(true);
          expect(Number.isFinite(magnitude)).toBe(true);
          for (const [from, to] of episodes) expect(from >= start && to <= end && from <= to).toBe(true);
        }
      }
    }
  });
});
