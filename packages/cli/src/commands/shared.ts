import { type LogFile, logFiles } from 'beamkeep/node';
import type { Site } from 'beamkeep/site';
import { Argument, Option } from 'commander';
import { readSite } from '../files/readSite.js';
import type { Io } from '../io.js';
import { wrap } from '../say/wrap.js';
import { required } from './required.js';

/* What the commands that read a log have in common. */

/** The logs of a command: one or more. */
export const logArgument = (): Argument =>
  new Argument('<log...>', 'CSV of the received signal, gzip or not; several are one log; "-" is standard input');

/** The site file of a command. */
export const siteOption = (): Option =>
  new Option('--site <file>', 'required: site file (JSON) with beams, columns, thresholds; "-" is standard input');

/** The options that every such command takes. */
export interface LogOptions {
  readonly site?: string;
  readonly json?: true;
}

/** The site, read, and the logs, ready to be read. */
export async function opened(
  paths: readonly string[],
  { site }: LogOptions,
  io: Io,
): Promise<{ readonly site: Site; readonly files: readonly LogFile[] }> {
  const known = await readSite(required(site, '--site <file>'), io, paths);
  return { site: known, files: await logFiles(paths, io.stdin) };
}

/** What the help says about logs and site files. */
export const logNotes = wrap(
  'A log has a header line, a time column and one column a beam; the site file names the columns, the thresholds, ' +
    'the delays and the time zone. What the site file leaves out and bears on safety is told under "Assumed".',
  80,
);
