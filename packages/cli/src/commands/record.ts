import { dirname, isAbsolute, join } from 'node:path';
import { diagnose, UsageError } from 'beamkeep';
import { type CommissioningRecord, parseDay, parseRecord, record, recordPage } from 'beamkeep/commissioning';
import { logFiles } from 'beamkeep/node';
import { Command } from 'commander';
import { readSite } from '../files/readSite.js';
import { readText } from '../files/readSmall.js';
import { exists, writeWhole } from '../files/writeWhole.js';
import type { Io } from '../io.js';
import { recordText } from '../say/commissioning/record.js';
import { json } from '../say/json.js';
import { look } from '../say/look.js';
import { wrap } from '../say/wrap.js';
import type { CommandMaker } from './command.js';

interface Options {
  readonly page?: string;
  readonly out?: string;
  readonly force?: boolean;
  readonly json?: true;
}

const notes = wrap(
  'The day file says which scan, which covered test and which proof belongs to which beam, and what people must write ' +
    'down: see formats-commissioning.md. Paths in it are meant from its own folder. Where it names a log, the log is diagnosed, and what asks for ' +
    'someone to go stands in the record. A saved record can be given instead, ' +
    'to print its page again. Names are personal data: keep the files where they belong.',
  80,
);

/** A record from a day file, or one that was saved. */
async function recordFrom(path: string, io: Io): Promise<CommissioningRecord> {
  const text = await readText(path, io);
  if (/^\s*\{\s*"format"\s*:\s*"beamkeep-record\//.test(text)) return parseRecord(text, path);
  const day = parseDay(text, path);
  const folder = path === '-' ? '.' : dirname(path);
  const named = (name: string) => (isAbsolute(name) ? name : join(folder, name));
  const site = await readSite(named(day.site), io, []);
  const files = {
    log: async (name: string) => {
      const [log] = await logFiles([named(name)]);
      if (log === undefined) throw new UsageError(`${name}: no such log`);
      return log;
    },
    text: (name: string) => readText(named(name), io),
  };
  const { log = [] } = day;
  const diagnosed = log.length > 0 ? await diagnose(await Promise.all(log.map(files.log)), site) : undefined;
  return record(day, site, files, Date.now(), diagnosed?.diagnosis);
}

/** `record`: what do I hand over? */
export const recordCommand: CommandMaker = (io, done) =>
  new Command('record')
    .summary('commissioning record from the files of the day: JSON, and a page to print')
    .description(
      'Answers every question of a commissioning day and gathers one record, as JSON and as a page that prints.',
    )
    .argument('<day>', 'day file (JSON), or a record saved before; "-" is standard input')
    .option('--page <file>', 'write the record as an HTML page that needs nothing else')
    .option('--out <file>', 'write the record as JSON')
    .option('--force', 'write over files that are there')
    .option('--json', 'print the record as JSON instead of a summary')
    .addHelpText(
      'after',
      `
Examples:
  beamkeep record datasets/tram-depot/commissioning/day.json --page record.html --out record.json
  beamkeep record record.json --page record.html --force

${notes}`,
    )
    .action(async (path: string, { page, out, force = false, json: asJson }: Options) => {
      for (const file of [page, out])
        if (file !== undefined && !force && (await exists(file)))
          throw new UsageError(`${file} is there already; name another, or add --force`);
      const gathered = await recordFrom(path, io);
      if (page !== undefined) await writeWhole(page, recordPage(gathered));
      if (out !== undefined) await writeWhole(out, json(gathered));
      const written = [page, out].filter((file) => file !== undefined);
      io.stdout.write(asJson ? json(gathered) : recordText(gathered, written, look(io)));
      done(0);
    });
