import { describe, expect, it } from 'vitest';
import { beamkeep } from '../cli/run.js';

/*
 * What is told depends on the log and the site alone, not on where the machine stands: its zone and its language may
 * change nothing, not even the way numbers and dates are written.
 */

const demo = ['datasets/tram-depot/log.csv.gz', '--site', 'datasets/tram-depot/site.json'];
const places = [
  ['UTC', 'C'],
  ['America/New_York', 'de_DE.UTF-8'],
  ['Pacific/Auckland', 'C'],
  ['Pacific/Auckland', 'de_DE.UTF-8'],
] as const;
const machines = places.map(([TZ, LANG]) => ({ TZ, LANG, LC_ALL: LANG }));

describe('the demo, wherever it is read', () => {
  it.each(['diagnose', 'respond'])('%s gives the same bytes in every zone and language', async (command) => {
    const told: string[] = [];
    for (const env of machines) {
      const { code, out, err } = await beamkeep([command, ...demo, '--json'], { env });
      expect({ code, err }).toEqual({ code: 0, err: '' });
      told.push(out);
    }
    expect(told[0]?.length).toBeGreaterThan(500);
    expect(new Set(told).size).toBe(1);
  });
});
