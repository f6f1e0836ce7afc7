// How long it takes to read and to diagnose a log, as a ratio to the bare loop over its bytes, in one run.
//
//   npm run bench -- [--floor DIR] [--rows 1000000] [--runs 5] [--only reading|diagnosis]
//
// DIR holds two programs that are no part of this project: make-log.mjs, which writes a log of four beams at 1 s, and
// scan-floor.mjs, which turns the same bytes into the same numbers and does nothing else. Left out, BEAMKEEP_FLOOR
// names it, or else it is a folder bench in a folder beside this workspace. Build first (npm run build).

import { spawnSync } from 'node:child_process';
import {
  createReadStream,
  createWriteStream,
  existsSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { createGzip } from 'node:zlib';
import { measured, root } from './measured.mjs';
import { rewritten } from './rewritten.mjs';

const { values: options } = parseArgs({
  options: {
    floor: { type: 'string', default: process.env.BEAMKEEP_FLOOR ?? folderBeside() ?? 'bench' },
    rows: { type: 'string', default: '1000000' },
    runs: { type: 'string', default: '5' },
    only: { type: 'string', default: 'reading,diagnosis' },
  },
});
/** A folder with the two programs, in a folder beside this workspace. */
function folderBeside() {
  const beside = readdirSync(join(root, '..')).map((name) => join(root, '..', name, 'bench'));
  return beside.find((folder) => existsSync(join(folder, 'scan-floor.mjs')));
}

const floor = resolve(options.floor);
for (const program of ['make-log.mjs', 'scan-floor.mjs']) {
  if (existsSync(join(floor, program))) continue;
  console.error(`bench: ${join(floor, program)} is not there: name its folder by --floor or BEAMKEEP_FLOOR`);
  process.exit(2);
}
const folder = mkdtempSync(join(tmpdir(), 'beamkeep-bench-'));
try {
  await bench();
} finally {
  rmSync(folder, { recursive: true });
}

async function bench() {
  const log = join(folder, 'log.csv');
  const site = join(folder, 'site.json');
  const made = spawnSync(process.execPath, [join(floor, 'make-log.mjs'), options.rows, '--out', log], {
    stdio: 'inherit',
  });
  if (made.status !== 0) throw new Error('make-log.mjs failed');
  const beams = ['b1', 'b2', 'b3', 'b4'].map((signalColumn, at) => ({
    id: `B${at + 1}`,
    layout: 'reflective',
    separation: 60,
    signalColumn,
    temperatureColumn: 't_roof',
  }));
  writeFileSync(site, JSON.stringify({ format: 'beamkeep-site/1', name: 'Invented hall', beams }));

  const read = fileURLToPath(new URL('readOnce.mjs', import.meta.url));
  const loop = { 'bare loop': [join(floor, 'scan-floor.mjs'), log, 'columns'] };
  if (options.only.includes('reading')) {
    const zipped = `${log}.gz`;
    await pipeline(createReadStream(log), createGzip(), createWriteStream(zipped));
    const general = join(folder, 'general.csv');
    await pipeline(createReadStream(log), rewritten(), createWriteStream(general));
    report('Reading', {
      ...loop,
      'rows, in order of time': [read, log, site, 'rows'],
      'rows; ISO local times, tabs, decimal commas': [read, general, site, 'rows'],
      'condensed traces': [read, log, site, 'traces'],
      'condensed traces from gzip': [read, zipped, site, 'traces'],
    });
  }
  if (options.only.includes('diagnosis')) {
    const cli = join(root, 'packages', 'cli', 'bin', 'beamkeep.js');
    report('Diagnosis', { ...loop, 'beamkeep diagnose': [cli, 'diagnose', log, '--site', site, '--json'] });
  }

  function report(title, programs) {
    const figures = measured(folder, programs, Number(options.runs));
    const base = figures['bare loop'];
    console.log(
      `\n${title}: ${options.rows} rows of four beams, ${(statSync(log).size / 1e6).toFixed(1)} MB, medians of ${options.runs}`,
    );
    console.log(`${'program'.padEnd(46)}processor  ratio    wall  ratio  peak MiB`);
    for (const [name, { processor, wall, peakMiB }] of Object.entries(figures)) {
      const cells = [
        processor.toFixed(2).padStart(9),
        (processor / base.processor).toFixed(2).padStart(7),
        wall.toFixed(2).padStart(8),
        (wall / base.wall).toFixed(2).padStart(7),
        peakMiB.toFixed(0).padStart(10),
      ];
      console.log(name.padEnd(46) + cells.join(''));
    }
  }
}
