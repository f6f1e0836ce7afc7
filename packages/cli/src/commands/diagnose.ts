import { type DiagnosisJson, diagnose, UsageError } from 'beamkeep';
import { type Severity, severities } from 'beamkeep/diagnosis';
import { panelEntries, secondCause } from 'beamkeep/moments';
import { Command, Option } from 'commander';
import { metered, sizeOf } from '../files/progress.js';
import { readSmall } from '../files/readSmall.js';
import type { Io } from '../io.js';
import type { Shown } from '../say/diagnosis.js';
import { json } from '../say/json.js';
import { reaches } from '../say/ordered.js';
import type { CommandMaker } from './command.js';
import { number } from './numbers.js';
import { type LogOptions, logArgument, logNotes, opened, siteOption } from './shared.js';

interface DiagnoseOptions extends LogOptions {
  readonly failOn?: Severity;
  readonly events?: string;
  readonly clockOffset?: number;
  readonly explain?: true;
}

/** The diagnosis for people; what makes it is loaded where it is wanted. */
async function text(diagnosis: DiagnosisJson, shown: Shown, io: Io): Promise<string> {
  const [{ diagnosisText }, { look }] = await Promise.all([import('../say/diagnosis.js'), import('../say/look.js')]);
  return diagnosisText(diagnosis, shown, look(io));
}

/** `diagnose`: why do the beams lose light? */
export const diagnoseCommand: CommandMaker = (io, done) =>
  new Command('diagnose')
    .summary('explain the loss of each beam: causes, evidence, what to do, forecast')
    .description('Explains why each beam lost light: causes with evidence and how sure, what to do, and a forecast.')
    .addArgument(logArgument())
    .addOption(siteOption())
    .option('--events <file>', "the panel's own list: CSV with time, beam, what; each event is joined to the log")
    .option(
      '--clock-offset <seconds>',
      "by how much the panel's clock runs ahead of the log's; worked out from the list when left out",
      number,
    )
    .option('--explain', 'tell for each finding what it rests on, what comes second and how to part the two')
    .option('--json', 'print the diagnosis as JSON instead of text')
    .addOption(
      new Option('--fail-on <severity>', 'exit with 1 when a finding is at or above this severity').choices(severities),
    )
    .addHelpText(
      'after',
      `
Examples:
  beamkeep diagnose log.csv --site site.json
  beamkeep diagnose january.csv.gz february.csv.gz --site site.json --json > diagnosis.json
  zcat log.csv.gz | beamkeep diagnose - --site site.json --fail-on act
  beamkeep diagnose log.csv --site site.json --events events.csv --explain

${logNotes}`,
    )
    .action(async (paths: string[], options: DiagnoseOptions) => {
      const { events: list, clockOffset: clockOffsetSeconds, explain } = options;
      if (clockOffsetSeconds !== undefined && list === undefined)
        throw new UsageError('--clock-offset tells how the clock of a list stands: name the list with --events');
      if (list === '-' && (options.site === '-' || paths.includes('-')))
        throw new UsageError('--events: "-" (standard input) is read already; give the list a name');
      const { site, files } = await opened(paths, options, io);
      const events = list === undefined ? undefined : panelEntries(await readSmall(list, io), list, site);
      const { diagnosis, records } = await metered(sizeOf(files), io.stderr, (onProgress) =>
        diagnose(files, site, { onProgress, events, clockOffsetSeconds, explain: explain && secondCause }),
      );
      io.stdout.write(options.json ? json(diagnosis) : await text(diagnosis, { site, records }, io));
      const { failOn } = options;
      const findings = diagnosis.beams.flatMap((beam) => beam.findings);
      done(failOn !== undefined && findings.some(({ severity }) => reaches(severity, failOn)) ? 1 : 0);
    });
