import { respond } from 'beamkeep';
import { Command } from 'commander';
import { metered, sizeOf } from '../files/progress.js';
import { json } from '../say/json.js';
import { look } from '../say/look.js';
import { responseText } from '../say/response.js';
import type { CommandMaker } from './command.js';
import { type LogOptions, logArgument, logNotes, opened, siteOption } from './shared.js';

/** `respond`: what would the equipment have signalled? */
export const respondCommand: CommandMaker = (io, done) =>
  new Command('respond')
    .summary('tell what equipment with these thresholds and delays signals on a log')
    .description('Tells when equipment with the thresholds and delays of the site file signals fire, fault or normal.')
    .addArgument(logArgument())
    .addOption(siteOption())
    .option('--json', 'print the changes as JSON instead of text')
    .addHelpText(
      'after',
      `
Examples:
  beamkeep respond log.csv --site site.json
  beamkeep respond log.csv --site site.json --json

${logNotes}`,
    )
    .action(async (paths: string[], options: LogOptions) => {
      const { site, files } = await opened(paths, options, io);
      const response = await metered(sizeOf(files), io.stderr, (onProgress) => respond(files, site, { onProgress }));
      io.stdout.write(options.json ? json(response) : responseText(response, site, look(io)));
      done(0);
    });
