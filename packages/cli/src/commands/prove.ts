import { UsageError } from 'beamkeep';
import { type ProofSheet, parseProofSheet, proofPlan, prove, textTable, usualSteps } from 'beamkeep/commissioning';
import { beamNamed } from 'beamkeep/log';
import { logFiles } from 'beamkeep/node';
import type { Site } from 'beamkeep/site';
import { Argument, Command } from 'commander';
import { metered, sizeOf } from '../files/progress.js';
import { readSite } from '../files/readSite.js';
import { readSmall, readText } from '../files/readSmall.js';
import type { Io } from '../io.js';
import { proofPlanText, proofText } from '../say/commissioning/proof.js';
import { json } from '../say/json.js';
import { look } from '../say/look.js';
import { wrap } from '../say/wrap.js';
import type { CommandMaker } from './command.js';
import { fromOption, instant, toOption } from './instant.js';
import { number } from './numbers.js';
import { required } from './required.js';
import { siteOption } from './shared.js';

interface Options {
  readonly site?: string;
  readonly beam?: string;
  readonly sheet?: string;
  readonly events?: string;
  readonly clockOffset?: number;
  readonly from?: string;
  readonly to?: string;
  readonly json?: true;
}

const notes = wrap(
  'Without a log it prints the proof sheet: what to do, and what each step must show by the settings of the site file. ' +
    'With the log of the test it finds each step in the signal and says pass or fail. A sheet is JSON: see ' +
    'formats-commissioning.md; --json without a log prints one to begin with, under "sheet".',
  80,
);

async function sheetFor({ sheet, beam }: Options, site: Site, io: Io): Promise<ProofSheet> {
  if (sheet === undefined) return usualSteps(beamNamed(site, beam));
  const read = parseProofSheet(await readText(sheet, io), sheet);
  if (beam !== undefined && beam !== read.beam)
    throw new UsageError(`--beam is ${beam}, and ${sheet} is a sheet of ${read.beam}: leave --beam out`);
  return read;
}

/** `prove`: what must the tests show, and did they? */
export const proveCommand: CommandMaker = (io, done) =>
  new Command('prove')
    .summary('proof sheet of a beam; with the log of the test: pass or fail, step by step')
    .description(
      'Prints what each step of a test must show, or finds the steps in the log of the test and judges them.',
    )
    .addArgument(new Argument('[log...]', 'CSV of the received signal during the test; "-" is standard input'))
    .addOption(siteOption())
    .option('--beam <id>', 'which beam, where the site has several and no sheet names one')
    .option('--sheet <file>', 'proof sheet (JSON); the usual steps when left out')
    .option('--events <file>', "the panel's own list: CSV with time, beam, what")
    .option('--clock-offset <seconds>', "by how much the panel's clock runs ahead of the logger's", number)
    .addOption(fromOption())
    .addOption(toOption())
    .option('--json', 'print the answer as JSON instead of text')
    .addHelpText(
      'after',
      `
Examples:
  beamkeep prove --site site.json --beam B1
  beamkeep prove proof-b1.csv --site site.json --sheet proof-b1.sheet.json
  beamkeep prove proof-b1.csv --site site.json --sheet proof-b1.sheet.json --events events.csv --clock-offset 140

${notes}`,
    )
    .action(async (paths: string[], options: Options) => {
      const site = await readSite(required(options.site, '--site <file>'), io, paths);
      const sheet = await sheetFor(options, site, io);
      if (paths.length === 0) {
        const plan = proofPlan(sheet, site);
        io.stdout.write(options.json ? json(plan) : proofPlanText(plan, look(io)));
        return done(0);
      }
      const files = await logFiles(paths, io.stdin);
      const { events } = options;
      const answer = await metered(sizeOf(files), io.stderr, async (onProgress) =>
        prove(
          files,
          site,
          sheet,
          {
            events: events === undefined ? undefined : textTable(await readSmall(events, io), events),
            clockOffsetSeconds: options.clockOffset,
            from: instant(options.from, site.timeZone, '--from'),
            to: instant(options.to, site.timeZone, '--to'),
          },
          { onProgress },
        ),
      );
      io.stdout.write(options.json ? json(answer) : proofText(answer, site.timeZone, look(io)));
      done(0);
    });
