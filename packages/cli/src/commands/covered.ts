import { covered } from 'beamkeep/commissioning';
import { Command } from 'commander';
import { metered, sizeOf } from '../files/progress.js';
import { coveredText } from '../say/commissioning/covered.js';
import { json } from '../say/json.js';
import { look } from '../say/look.js';
import { wrap } from '../say/wrap.js';
import type { CommandMaker } from './command.js';
import { fromOption, instant, toOption } from './instant.js';
import { type LogOptions, logArgument, opened, siteOption } from './shared.js';

interface Options extends LogOptions {
  readonly beam?: string;
  readonly from?: string;
  readonly to?: string;
}

const notes = wrap(
  'Log half a minute of clean air, cover the whole reflector (or the receiver) for half a minute, and log clean air ' +
    'again. The log needs the column of this beam only.',
  80,
);

/** `covered`: what comes back when the reflector is covered? */
export const coveredCommand: CommandMaker = (io, done) =>
  new Command('covered')
    .summary('covered test: what still comes back, and what that does to the thresholds')
    .description(
      'Tells from a logged covered test how much light does not come by the beam, and whether it can be fooled.',
    )
    .addArgument(logArgument())
    .addOption(siteOption())
    .option('--beam <id>', 'which beam, where the site has several')
    .addOption(fromOption())
    .addOption(toOption())
    .option('--json', 'print the answer as JSON instead of text')
    .addHelpText(
      'after',
      `
Examples:
  beamkeep covered covered-b1.csv --site site.json --beam B1
  beamkeep covered log.csv --site site.json --beam B1 --from 2027-01-20T10:05 --to 2027-01-20T10:08 --json

${notes}`,
    )
    .action(async (paths: string[], options: Options) => {
      const { site, files } = await opened(paths, options, io);
      const question = {
        beam: options.beam,
        from: instant(options.from, site.timeZone, '--from'),
        to: instant(options.to, site.timeZone, '--to'),
      };
      const answer = await metered(sizeOf(files), io.stderr, (onProgress) =>
        covered(files, site, question, { onProgress }),
      );
      io.stdout.write(options.json ? json(answer) : coveredText(answer, site.timeZone, look(io)));
      done(0);
    });
