import { explain } from 'beamkeep/moments';
import { Command } from 'commander';
import { metered, sizeOf } from '../files/progress.js';
import { explanationText } from '../say/explanation.js';
import { json } from '../say/json.js';
import { look } from '../say/look.js';
import type { CommandMaker } from './command.js';
import { required } from './required.js';
import { type LogOptions, logArgument, logNotes, opened, siteOption } from './shared.js';

interface ExplainOptions extends LogOptions {
  readonly at?: string;
  readonly beam?: string;
}

/** `explain`: why at that time? */
export const explainCommand: CommandMaker = (io, done) =>
  new Command('explain')
    .summary('tell why at one time: what the signal did, what recurs then, what it is')
    .description(
      'Tells what the signal did at a time, what recurs at that hour and day of the week, what it is, what to do.',
    )
    .addArgument(logArgument())
    .addOption(siteOption())
    .option(
      '--at <time>',
      'required: an instant ("2027-03-16T06:40:00Z"), a time on the clocks of the site ("2027-03-16 06:40"), or a time of day, of a day of the week where one is named ("06:40", "Tue 06:40")',
    )
    .option('--beam <id>', 'one beam only')
    .option('--json', 'print the explanation as JSON instead of text')
    .addHelpText(
      'after',
      `
Examples:
  beamkeep explain log.csv --site site.json --at "Tue 06:40"
  beamkeep explain log.csv --site site.json --at 2027-03-16T06:42:30Z --beam B3 --json

${logNotes}`,
    )
    .action(async (paths: string[], options: ExplainOptions) => {
      const at = required(options.at, '--at <time>');
      const { site, files } = await opened(paths, options, io);
      const answer = await metered(sizeOf(files), io.stderr, (onProgress) =>
        explain(files, site, { at, beam: options.beam, onProgress }),
      );
      io.stdout.write(options.json ? json(answer) : explanationText(answer, site, look(io)));
      done(0);
    });
