import { Argument, Option } from 'commander';

/** The logs of a command: one or more. */
export const logArgument = (): Argument =>
  new Argument('<log...>', 'CSV of the received signal, gzip or not; several are one log; "-" is standard input');

/** The site file of a command. */
export const siteOption = (): Option =>
  new Option(
    '--site <file>',
    'site file (JSON): beams, columns, thresholds; "-" is standard input',
  ).makeOptionMandatory();

/** What the help says about logs and site files. */
export const logNotes = `A log has a header line, a time column and one column a beam; the site file names the columns, the thresholds,
the delays and the time zone. What the site file leaves out and bears on safety is told under "Assumed".`;
