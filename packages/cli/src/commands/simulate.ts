import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { createGzip } from 'node:zlib';
import { UsageError } from 'beamkeep';
import { happenings, simulateLog } from 'beamkeep/simulation';
import { Command, Option } from 'commander';
import { exists, refusedWriting, writeWhole } from '../files/writeWhole.js';
import { json } from '../say/json.js';
import { plural } from '../say/numbers.js';
import { plain } from '../say/plain.js';
import { wrap } from '../say/wrap.js';
import type { CommandMaker } from './command.js';
import { number, whole } from './numbers.js';
import { required } from './required.js';
import { wordList } from './wordList.js';

interface Options {
  readonly out?: string;
  readonly seed: number;
  readonly days: number;
  readonly interval: number;
  readonly beams: number;
  readonly causes: readonly string[];
  readonly force?: boolean;
  readonly json?: true;
}

const usualCauses: readonly string[] = ['contamination', 'building-movement', 'obstruction', 'smoke-like'];

const names = { log: 'log.csv.gz', site: 'site.json', truth: 'truth.json' } as const;

/** Lines in pieces worth zipping. */
function* inPieces(lines: Iterable<string>): Generator<string> {
  let piece: string[] = [];
  for (const line of lines) {
    piece.push(line);
    if (piece.length === 2000) {
      yield piece.join('');
      piece = [];
    }
  }
  yield piece.join('');
}

/** A folder to write into, in which none of our files lies yet, unless they may be written over. */
async function folderFor(folder: string, force: boolean): Promise<void> {
  await mkdir(folder, { recursive: true }).catch((error: unknown) => {
    throw refusedWriting(folder, error);
  });
  for (const name of force ? [] : Object.values(names)) {
    const path = join(folder, name);
    if (await exists(path)) throw new UsageError(`${path} is there already; name another folder, or add --force`);
  }
}

/** `simulate`: a log whose causes are known. */
export const simulateCommand: CommandMaker = (io, done) =>
  new Command('simulate')
    .summary('write an invented log with its site file and the truth about it')
    .description('Writes an invented log, its site file and the truth about its causes, to learn on or to test with.')
    .option('--out <folder>', `required: folder for ${Object.values(names).join(', ')}`)
    .option('--seed <number>', 'whole number; the same number gives the same log', whole, 1)
    .option('--days <number>', 'length of the log', number, 120)
    .option('--interval <seconds>', 'time between samples', number, 60)
    .option('--beams <number>', 'how many beams', whole, 4)
    .addOption(
      new Option('--causes <words>', 'causes with commas between, dealt out over the beams; "none" for a healthy site')
        .argParser(wordList)
        .default(usualCauses, usualCauses.join(',')),
    )
    .option('--force', 'write over files that are there')
    .option('--json', 'print what was written as JSON')
    .addHelpText(
      'after',
      `
${wrap(`Causes: ${[...happenings, 'cleaned'].join(', ')}`, 80, '', '  ')}

Examples:
  beamkeep simulate --seed 7 --days 120 --beams 4 --out practice
  beamkeep simulate --out mist --days 30 --beams 1 --causes condensation,smoke-like`,
    )
    .action(async ({ out: given, seed, days, interval, beams, causes, force = false, json: asJson }: Options) => {
      const out = required(given, '--out <folder>');
      const { lines, site, truth } = simulateLog({ seed, days, intervalSeconds: interval, beams, causes });
      await folderFor(out, force);
      const path = (name: string) => join(out, name);
      await writeWhole(path(names.log), Readable.from(inPieces(lines)).pipe(createGzip({ level: 9 })));
      await writeWhole(path(names.site), json(site));
      await writeWhole(path(names.truth), json(truth(names.log, names.site)));
      const files = { log: path(names.log), site: path(names.site), truth: path(names.truth) };
      const written = {
        format: 'beamkeep-simulation/1',
        invented: true,
        seed,
        days,
        intervalSeconds: interval,
        beams,
        causes,
        files,
      };
      const text = `Invented: ${plural(beams, 'beam')}, ${plural(days, 'day')}, seed ${seed}. Written: ${Object.values(files).join(', ')}`;
      io.stdout.write(asJson ? json(written) : `${plain(text)}\n`);
      done(0);
    });
