import { readdir, stat } from 'node:fs/promises';
import { basename, dirname, join, posix, resolve } from 'node:path';
import { UsageError } from 'beamkeep';

/*
 * Which files of a folder are a log, and which site file tells about it:
 *
 *     north.csv.gz   north.site.json          a log and its site, side by side
 *     depot/log.csv.gz   depot/site.json      a folder of its own; other CSV files in it are no logs
 *     hall/january.csv   hall/february.csv   hall/site.json
 *                                             a folder without log.csv: all its CSV files together are one log
 *
 * A log goes by one name from the folder down: that of its file, or that of the folder where several files are one log.
 */

/** One log of a fleet: what is read for it. Paths start where its name starts. */
export interface FleetLog {
  readonly logs: readonly string[];
  readonly site: string;
}

const csv = /\.csv(?:\.gz)?$/i;
const ownSite = /\.site\.json$/;
const folderSite = 'site.json';

const siteNameOf = (log: string): string => log.replace(csv, '.site.json');
const isWhole = (log: string): boolean => /^log\.csv(?:\.gz)?$/.test(log);

/** Names of files in a folder, sorted; nothing hidden. */
async function filesIn(folder: string): Promise<string[]> {
  const found = await readdir(folder, { withFileTypes: true });
  return found.flatMap((entry) => (entry.isDirectory() || entry.name.startsWith('.') ? [] : [entry.name])).sort();
}

/** The CSV files of a folder that belong to its `site.json`: `log.csv`, or where there is none, all without their own site. */
function logsOfFolder(files: readonly string[]): string[] {
  const without = files.filter((file) => csv.test(file) && !files.includes(siteNameOf(file)));
  const whole = without.filter(isWhole);
  return whole.length > 0 ? whole : without;
}

/** The names of the logs in one folder, those that lack something included: what they lack is told when they are read. */
function namesIn(files: readonly string[]): string[] {
  const own = files.filter((file) => csv.test(file) && files.includes(siteNameOf(file)));
  const lonely = files.filter((site) => ownSite.test(site) && !own.some((log) => siteNameOf(log) === site));
  const rest = logsOfFolder(files);
  if (!files.includes(folderSite)) return [...own, ...rest, ...lonely];
  return [...own, ...(rest.some(isWhole) ? rest : ['.']), ...lonely];
}

/**
 * Names of all logs in a folder and the folders in it. Links to folders are not followed, hidden ones left alone.
 *
 * @throws UsageError for a folder that is not there or may not be read
 */
export async function fleetNames(folder: string): Promise<string[]> {
  const names: string[] = [];
  const waiting = [''];
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    const place = at;
    const entries = await told(join(folder, place), () => readdir(join(folder, place), { withFileTypes: true }));
    const files = entries
      .filter((entry) => !entry.isDirectory() && !entry.name.startsWith('.'))
      .map(({ name }) => name);
    names.push(...namesIn(files.sort()).map((name) => posix.join(place, name)));
    for (const entry of entries) {
      if (entry.isDirectory() && !entry.name.startsWith('.')) waiting.push(posix.join(place, entry.name));
    }
  }
  return names.sort();
}

/**
 * The files of a log by its name.
 *
 * @param name a CSV file, or a folder with a `site.json`
 * @param root folder in which the name starts
 * @throws UsageError telling what the log lacks
 */
export async function fleetLog(name: string, root = '.'): Promise<FleetLog> {
  const found = await told(name, () => stat(resolve(root, name)));
  if (found.isDirectory()) {
    const files = await filesIn(resolve(root, name));
    const logs = logsOfFolder(files).map((file) => posix.join(name, file));
    const site = posix.join(name, folderSite);
    if (!files.includes(folderSite)) throw new UsageError(`${name}: no ${folderSite} in this folder`);
    if (logs.length === 0) throw new UsageError(`${site}: no log (CSV) beside it`);
    return { logs, site };
  }
  if (ownSite.test(name)) throw new UsageError(`${name}: no log ${basename(name).replace(ownSite, '.csv')} beside it`);
  const folder = dirname(name);
  const files = await filesIn(resolve(root, folder));
  const beside = [siteNameOf(basename(name)), ...(isWhole(basename(name)) ? [folderSite] : [])];
  const site = beside.find((file) => files.includes(file));
  if (site !== undefined) return { logs: [name], site: posix.join(folder, site) };
  throw new UsageError(`${name}: no site file beside it: write ${siteNameOf(basename(name))}`);
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'no such file or folder',
  ENOTDIR: 'this is no folder',
  EACCES: 'this user may not read it',
};

/** What the system says of a place, in words. */
async function told<T>(path: string, act: () => Promise<T>): Promise<T> {
  try {
    return await act();
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    if (!/^E[A-Z]+$|^ERR_INVALID_ARG_VALUE$/.test(code)) throw error;
    throw new UsageError(`${path}: ${reasons[code] ?? `cannot be read (${code})`}`);
  }
}
