import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gunzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { tramDepot, tramDepotSeed } from '../../packages/beamkeep/scripts/tramDepot.js';
import { simulate } from '../../packages/beamkeep/src/simulation/index.js';

const folder = fileURLToPath(new URL('../../datasets/tram-depot/', import.meta.url));
const stored = (name: string) => readFileSync(`${folder}${name}`);
const demo = simulate(tramDepot, tramDepotSeed);

describe('the tram depot', () => {
  it('comes out of its scenario and its seed, byte for byte', () => {
    expect([...demo.lines()].join('') === gunzipSync(stored('log.csv.gz')).toString()).toBe(true);
    expect(JSON.parse(stored('site.json').toString())).toEqual(demo.site);
    expect(JSON.parse(stored('truth.json').toString())).toEqual(demo.truth('log.csv.gz', 'site.json'));
  });

  it('says that it is invented and stays under 3 MB', () => {
    expect(stored('README.md').toString()).toContain('Everything here is invented');
    expect(stored('site.json').toString()).toContain('(invented)');
    expect(stored('log.csv.gz').length).toBeLessThan(3e6);
  });

  it('tells its story: what each beam has to show', () => {
    const causes = demo.beams.map(({ truth }) => [...new Set(truth.causes.map(({ cause }) => cause))].sort());
    expect(causes).toEqual([
      ['building-movement', 'cleaned', 'contamination', 'data-gap'],
      ['building-movement', 'cleaned', 'contamination', 'data-gap', 'misalignment-step'],
      ['data-gap', 'obstruction', 'process-aerosol', 'smoke-like'],
      ['ambient-light', 'condensation', 'data-gap'],
    ]);
  });

  it('alarms at about 06:40 on Tuesdays, on the wall clock of Lisbon', () => {
    const smoke = demo.beams[2]?.truth.causes.filter(({ cause }) => cause === 'smoke-like') ?? [];
    const wall = new Intl.DateTimeFormat('en-GB', {
      timeZone: 'Europe/Lisbon',
      weekday: 'long',
      hour: '2-digit',
      minute: '2-digit',
    });
    expect(smoke.map(({ start }) => wall.format(new Date(start)).slice(0, 11))).toEqual(['Tuesday 06:', 'Tuesday 06:']);
  });
});
