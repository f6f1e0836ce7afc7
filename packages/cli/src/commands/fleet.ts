import { availableParallelism } from 'node:os';
import { UsageError } from 'beamkeep';
import { type Severity, severities } from 'beamkeep/diagnosis';
import { Command, Option } from 'commander';
import { fleetBar } from '../fleet/fleetBar.js';
import { fleetText } from '../fleet/fleetText.js';
import { pipeStep } from '../fleet/pipeStep.js';
import { visitsOf } from '../fleet/visits.js';
import { wholeFleet } from '../fleet/wholeFleet.js';
import type { ExitCode, Io } from '../io.js';
import { json } from '../say/json.js';
import { look } from '../say/look.js';
import { plural } from '../say/numbers.js';
import { reaches } from '../say/ordered.js';
import { plain } from '../say/plain.js';
import { wrap } from '../say/wrap.js';
import type { CommandMaker } from './command.js';
import { whole } from './numbers.js';
import { required } from './required.js';

interface Options {
  readonly out?: string;
  readonly jobs?: number;
  readonly rows: number;
  readonly json?: true;
  readonly failOn?: Severity;
}

/** A log that gave no diagnosis, told at once. */
const tellUnusable = (io: Io, error: string): unknown => io.stderr.write(`beamkeep: ${plain(error)}\n`);

/** A finding that was asked for counts before a log that could not be used. */
function exitCode(
  severitiesFound: Iterable<Severity | null>,
  failOn: Severity | undefined,
  unusable: number,
): ExitCode {
  for (const severity of severitiesFound) {
    if (failOn !== undefined && severity !== null && reaches(severity, failOn)) return 1;
  }
  return unusable > 0 ? 2 : 0;
}

/** Names on standard input, lines on standard output. */
async function asPipeStep(io: Io, { out, jobs, json: asJson, failOn }: Options): Promise<ExitCode> {
  if (out !== undefined || jobs !== undefined || asJson)
    throw new UsageError('"-" takes names from standard input and prints their lines: no --out, --jobs or --json here');
  const found = new Set<Severity | null>();
  let unusable = 0;
  for await (const line of pipeStep(io)) {
    for (const { severity } of visitsOf(line)) found.add(severity);
    if (line.error === undefined) continue;
    unusable++;
    tellUnusable(io, line.error);
  }
  return exitCode(found, failOn, unusable);
}

async function asWhole(folder: string, io: Io, options: Options): Promise<ExitCode> {
  const out = required(options.out, '--out <file>');
  const { jobs = availableParallelism(), rows, failOn } = options;
  if (jobs < 1 || rows < 0) throw new UsageError('--jobs must be 1 or more, --rows 0 or more');
  const bar = fleetBar(io.stderr);
  const told = new Set<string>();
  try {
    const visits = await wholeFleet(folder, out, jobs, {
      started({ logs, done, torn }) {
        if (logs === 0) throw new UsageError(`${folder}: no log in it: "beamkeep help fleet" tells how a log is found`);
        if (torn > 0) io.stderr.write(`${plain(out)}: ${plural(torn, 'byte')} of a torn last line dropped\n`);
        if (done > 0) io.stderr.write(`${plural(done, 'log')} of ${logs} done before\n`);
        bar.start(logs, done);
      },
      ready({ log, error }) {
        bar.ready();
        if (error === undefined) return;
        told.add(log);
        bar.between(() => tellUnusable(io, error));
      },
    });
    bar.end();
    for (const { log, error } of visits.unusable) if (!told.has(log)) tellUnusable(io, error);
    io.stdout.write(options.json ? json(visits) : fleetText(visits, rows, look(io)));
    return exitCode(
      visits.beams.map(({ severity }) => severity),
      failOn,
      visits.unusable.length,
    );
  } finally {
    bar.end();
  }
}

/** `fleet`: which of many beams needs a visit first? */
export const fleetCommand: CommandMaker = (io, done) =>
  new Command('fleet')
    .summary('diagnose every log of a folder over all cores, and tell what needs a visit first')
    .description(
      'Diagnoses every log of a folder over all cores: one line of JSON a log, written as soon as it is ready; then a ' +
        'table of what needs a visit first. Run again after a kill, it does only what is missing or has changed.',
    )
    .argument('<folder>', 'folder with logs and their site files; "-" takes names of logs from standard input')
    .option('--out <file>', 'required with a folder: file to which a line of JSON a log is appended')
    .option('--jobs <number>', 'processes at once (default: one a core)', whole)
    .option('--rows <number>', 'longest table', whole, 40)
    .option('--json', 'print the table as JSON, all of it')
    .addOption(
      new Option('--fail-on <severity>', 'exit with 1 when a finding is at or above this severity').choices(severities),
    )
    .addHelpText(
      'after',
      `
${wrap('A log is NAME.csv or NAME.csv.gz with NAME.site.json beside it; or a folder with site.json and log.csv or log.csv.gz; or a folder with site.json whose CSV files together are one log.', 80)}

${wrap('A log that cannot be used is told in its line and on standard error, and the rest go on; the exit code is then 2, or 1 where --fail-on found something.', 80)}

Examples:
  beamkeep fleet logs --out fleet.jsonl
  beamkeep fleet logs --out fleet.jsonl --fail-on act
  (cd logs && ls *.csv.gz | parallel --pipe -N 20 beamkeep fleet - ) > fleet.jsonl`,
    )
    .action(async (folder: string, options: Options) => {
      done(folder === '-' ? await asPipeStep(io, options) : await asWhole(folder, io, options));
    });
