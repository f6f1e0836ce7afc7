import { diagnose } from 'beamkeep';
import { type Severity, severities } from 'beamkeep/diagnosis';
import { Command, Option } from 'commander';
import { metered, sizeOf } from '../files/progress.js';
import { diagnosisText } from '../say/diagnosis.js';
import { json } from '../say/json.js';
import { look } from '../say/look.js';
import { reaches } from '../say/ordered.js';
import type { CommandMaker } from './command.js';
import { type LogOptions, logArgument, logNotes, opened, siteOption } from './shared.js';

interface DiagnoseOptions extends LogOptions {
  readonly failOn?: Severity;
}

/** `diagnose`: why do the beams lose light? */
export const diagnoseCommand: CommandMaker = (io, done) =>
  new Command('diagnose')
    .summary('explain the loss of each beam: causes, evidence, what to do, forecast')
    .description('Explains why each beam lost light: causes with evidence and how sure, what to do, and a forecast.')
    .addArgument(logArgument())
    .addOption(siteOption())
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

${logNotes}`,
    )
    .action(async (paths: string[], options: DiagnoseOptions) => {
      const { site, files } = await opened(paths, options, io);
      const { diagnosis, records } = await metered(sizeOf(files), io.stderr, (onProgress) =>
        diagnose(files, site, { onProgress }),
      );
      io.stdout.write(options.json ? json(diagnosis) : diagnosisText(diagnosis, { site, records }, look(io)));
      const { failOn } = options;
      const findings = diagnosis.beams.flatMap((beam) => beam.findings);
      done(failOn !== undefined && findings.some(({ severity }) => reaches(severity, failOn)) ? 1 : 0);
    });
