import { UsageError } from 'beamkeep';
import { instantOf } from 'beamkeep/site';
import { Option } from 'commander';

/** The stretch of a log that is a test. */
export const fromOption = (): Option =>
  new Option('--from <time>', 'begin of the test, where the log is longer; without an offset in the zone of the site');
export const toOption = (): Option => new Option('--to <time>', 'end of the test');

/**
 * An instant of the command line [ms]; undefined where none is given.
 *
 * @throws UsageError for what is no time
 */
export function instant(text: string | undefined, timeZone: string, option: string): number | undefined {
  if (text === undefined) return undefined;
  const read = instantOf(text, timeZone);
  if ('instant' in read) return read.instant;
  throw new UsageError(`${option}: "${text}" is no time: write date and time as in 2027-03-02T09:00:00Z`);
}
