import { respond } from 'beamkeep';
import { Command } from 'commander';
import { logSources } from '../files/logSources.js';
import { metered } from '../files/progress.js';
import { readSite } from '../files/readSite.js';
import { json } from '../say/json.js';
import { look } from '../say/look.js';
import { responseText } from '../say/response.js';
import type { CommandMaker } from './command.js';
import { logArgument, logNotes, siteOption } from './shared.js';

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
    .action(
      async (paths: string[], { site: sitePath, json: asJson }: { readonly site: string; readonly json?: true }) => {
        const site = await readSite(sitePath, io, paths);
        const response = await metered(await logSources(paths, io), io.stderr, (sources) => respond(sources, site));
        io.stdout.write(asJson ? json(response) : responseText(response, site, look(io)));
        done(0);
      },
    );
