// What reading and diagnosing cost, as ratios to the bare loop over the same bytes in the same run, and what they answer.
//
//   npm run bench -- [--floor DIR] [--rows 10000000] [--runs 5] [--long 10] [--long-runs 1]
//                    [--only reading,diagnosis,long,changes,sizes,truth]
//
// DIR holds two programs that are no part of this project: make-log.mjs, which writes a log of four beams at 1 s, and
// scan-floor.mjs, which turns the same bytes into the same numbers and does nothing else. Left out, BEAMKEEP_FLOOR
// names it, or else it is a folder bench in a folder beside this workspace. Build first (npm run build).
//
// The long log has so many times as many rows as the other; it takes 46 bytes of the temporary folder a row.

import { createReadStream, createWriteStream, mkdtempSync, rmSync, statSync } from 'node:fs';
import { availableParallelism, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { createGzip } from 'node:zlib';
import { floorFolder, makeLog, makeSite } from './invented.mjs';
import { measured, root, said } from './measured.mjs';
import { rewritten } from './rewritten.mjs';
import { bundledSize } from './sizes.mjs';
import { thinned } from './thinned.mjs';

const { values: options } = parseArgs({
  options: {
    floor: { type: 'string' },
    rows: { type: 'string', default: '10000000' },
    runs: { type: 'string', default: '5' },
    long: { type: 'string', default: '10' },
    'long-runs': { type: 'string', default: '1' },
    only: { type: 'string', default: 'reading,diagnosis,long,changes,sizes,truth' },
  },
});
const parts = options.only.split(',');
const rows = Number(options.rows);

const floor = floorFolder(root, options.floor, ['make-log.mjs', 'scan-floor.mjs']);
const folder = mkdtempSync(join(tmpdir(), 'beamkeep-bench-'));
process.once('SIGINT', () => process.exit(130));
process.once('exit', () => rmSync(folder, { recursive: true, force: true }));

const here = (name) => fileURLToPath(new URL(name, import.meta.url));
const cli = join(root, 'packages', 'cli', 'bin', 'beamkeep.js');
const site = join(folder, 'site.json');
const truth = join(folder, 'truth.json');
const log = join(folder, 'log.csv');
makeSite(site);
makeLog(floor, log, rows, truth);
console.log(
  `${rows} rows of four beams, ${(statSync(log).size / 1e6).toFixed(1)} MB; medians of ${options.runs}; ` +
    `Node ${process.version}, ${availableParallelism()} cores, load ${loadavg()
      .map((load) => load.toFixed(1))
      .join(' ')} as it begins`,
);
const loop = { 'bare loop': [join(floor, 'scan-floor.mjs'), log, 'columns'] };
const diagnosing = (file) => [cli, 'diagnose', file, '--site', site, '--json'];
let short;

if (parts.includes('reading')) {
  const read = here('readOnce.mjs');
  const zipped = `${log}.gz`;
  await pipeline(createReadStream(log), createGzip({ level: 1 }), createWriteStream(zipped));
  const general = join(folder, 'general.csv');
  await pipeline(createReadStream(log), rewritten(), createWriteStream(general));
  const figures = report('Reading', {
    ...loop,
    'rows, in order of time': [read, log, site, 'rows'],
    'rows; ISO local times, tabs, decimal commas': [read, general, site, 'rows'],
    'condensed traces': [read, log, site, 'traces'],
    'condensed traces from gzip': [read, zipped, site, 'traces'],
  });
  const { wall } = figures['condensed traces from gzip'];
  console.log(`gzip against plain, wall: ${(wall / figures['condensed traces'].wall).toFixed(2)}`);
  rmSync(zipped);
  rmSync(general);
}
if (parts.includes('diagnosis')) {
  const figures = report('Diagnosis', { ...loop, 'beamkeep diagnose': diagnosing(log) });
  short = figures['beamkeep diagnose'];
}
if (parts.includes('truth')) {
  console.log('\nAnswers against what was put in (samples off; % off)');
  for (const every of [1, 10, 60]) {
    const file = every === 1 ? log : join(folder, `every${every}.csv`);
    if (every > 1) await pipeline(createReadStream(log), thinned(every), createWriteStream(file));
    const answer = said([here('truth.mjs'), file, site, truth]);
    const percent = (value) => value.toFixed(2).padStart(6);
    console.log(
      `${`every ${every} s`.padEnd(12)} knock ${answer.knock}, cleaning ${answer.cleaning}; ` +
        `false steps ${answer.falseSteps}, false cleanings ${answer.falseCleanings}; 24 h ${percent(answer.cycle24)}, ` +
        `12 h ${percent(answer.cycle12)}, a kelvin ${answer.perKelvin.map(percent).join(' and ')}`,
    );
  }
}
if (parts.includes('changes')) {
  const { processor, found } = said([here('changes.mjs')]);
  console.log(
    `\nChange points in 166,667 rows, three of them jumps: ${processor.toFixed(2)} s, found at ${found.join(', ')}`,
  );
}
if (parts.includes('sizes')) {
  const [one, whole] = await Promise.all([bundledSize('{ percentToDecibels }'), bundledSize('*')]);
  console.log(`\nBundled, minified and zipped: one conversion ${one.toFixed(2)} kB, the whole ${whole.toFixed(1)} kB`);
}
if (parts.includes('long')) {
  rmSync(log);
  const long = join(folder, 'long.csv');
  makeLog(floor, long, rows * Number(options.long), truth);
  const { 'beamkeep diagnose': figures } = measured(
    folder,
    { 'beamkeep diagnose': diagnosing(long) },
    Number(options['long-runs']),
  );
  const times = (key) => (short === undefined ? '' : ` (${(figures[key] / short[key]).toFixed(2)} x)`);
  console.log(
    `\nDiagnosis of ${options.long} x as many rows: processor ${figures.processor.toFixed(1)} s${times('processor')}, ` +
      `wall ${figures.wall.toFixed(1)} s${times('wall')}, peak ${figures.peakMiB.toFixed(0)} MiB`,
  );
}
console.log(
  `\nload ${loadavg()
    .map((load) => load.toFixed(1))
    .join(' ')} as it ends`,
);

/** Measures programs in turn and prints a table of them. */
function report(title, programs) {
  const figures = measured(folder, programs, Number(options.runs));
  const base = figures['bare loop'];
  console.log(`\n${title.padEnd(46)}processor  ratio    wall  ratio  peak MiB`);
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
  return figures;
}
