import leven from 'leven';
import { UsageError } from '../columns/index.js';
import { nearest, quoted } from '../site/index.js';
import type { LogHead } from './head.js';

/** Most names that a message lists. */
const mostListed = 12;

/** Names for a message, in quotes; their number where they are many. */
export function listed(names: readonly string[]): string {
  const some = names.slice(0, mostListed).map((name) => quoted(name));
  return names.length > mostListed ? `${some.join(', ')} and ${names.length - mostListed} more` : some.join(', ');
}

/**
 * What is said of a name that is not there: the nearest that is, where it is near enough to be what was meant, and all.
 */
export function notFound(name: string, known: readonly string[], what: string): string {
  const near = nearest(name, known);
  const meant = near !== undefined && leven(near.toLowerCase(), name.toLowerCase()) <= Math.max(1, near.length / 3);
  return `no ${what} ${quoted(name)}${meant ? `: is it ${quoted(near)}?` : ''} (there ${known.length === 1 ? 'is' : 'are'} ${listed(known)})`;
}

/**
 * The cell of the column of a name.
 *
 * @param by the key of the site file that names it
 * @throws UsageError where the header has none, or two
 */
export function theOnly({ file, headerLine, names }: LogHead, name: string, by: string): number {
  const at = names.indexOf(name);
  const place = `${file}:${headerLine}: ${by}`;
  if (at < 0) throw new UsageError(`${place}: ${notFound(name, names, 'column')}`);
  if (names.indexOf(name, at + 1) >= 0)
    throw new UsageError(`${place}: two columns are named ${quoted(name)}: name them apart`);
  return at;
}
