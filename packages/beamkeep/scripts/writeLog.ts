import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Simulation } from '../src/simulation/index.js';

/** Names of one log's three files. */
export interface LogNames {
  readonly log: string;
  readonly site: string;
  readonly truth: string;
}

/** Writes a simulated log, its site file and its truth into a folder; the same bytes from the same simulation. */
export function writeLog(simulation: Simulation, folder: string, names: LogNames): void {
  const blocks: string[] = [];
  let block: string[] = [];
  for (const line of simulation.lines()) {
    block.push(line);
    if (block.length === 4096) {
      blocks.push(block.join(''));
      block = [];
    }
  }
  const text = blocks.join('') + block.join('');
  writeFileSync(join(folder, names.log), gzipSync(text, { level: 7 }));
  writeFileSync(join(folder, names.site), `${JSON.stringify(simulation.site, null, 2)}\n`);
  writeFileSync(join(folder, names.truth), `${JSON.stringify(simulation.truth(names.log, names.site), null, 1)}\n`);
}
