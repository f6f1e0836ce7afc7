// Writes datasets/tram-depot from its scenario and its seed:
//   node packages/beamkeep/scripts/run.mjs packages/beamkeep/scripts/make-demo.ts
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Simulation, simulate } from '../src/simulation/index.js';
import { panelAheadSeconds, tramDepot, tramDepotSeed } from './tramDepot.js';
import { writeLog } from './writeLog.js';

/** The panel's own list of what it signalled, on its own clock, which runs ahead. */
function panelList({ time, beams, scenario }: Simulation): string {
  const list: { at: number; beam: string; what: string }[] = [];
  for (const { id, reading } of beams) {
    const alarmThreshold = scenario.beams.find((beam) => beam.id === id)?.alarmThreshold ?? 35;
    let [fire, bright] = [false, false];
    for (const [i, value] of reading.entries()) {
      if (Number.isNaN(value)) continue;
      const at = (time[i] as number) + (10 + panelAheadSeconds) * 1000;
      const [alarms, dazzled] = [value <= 100 - alarmThreshold, value >= 112];
      if (alarms && !fire) list.push({ at, beam: id, what: 'fire' }, { at: at + 47 * 60_000, beam: id, what: 'reset' });
      if (dazzled && !bright) list.push({ at, beam: id, what: 'fault' });
      fire = alarms || (fire && value < 90);
      bright = dazzled || (bright && value > 101.5);
    }
  }
  const rows = list
    .sort((a, b) => a.at - b.at)
    .map(({ at, beam, what }) => `${new Date(at).toISOString().slice(0, 19)}Z,${beam},${what}`);
  return `${['time,beam,what', ...rows].join('\n')}\n`;
}

const folder = process.argv[2] ?? 'datasets/tram-depot';
mkdirSync(folder, { recursive: true });
const simulation = simulate(tramDepot, tramDepotSeed);
writeLog(simulation, folder, { log: 'log.csv.gz', site: 'site.json', truth: 'truth.json' });
writeFileSync(join(folder, 'events.csv'), panelList(simulation));
