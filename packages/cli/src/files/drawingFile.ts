import { UsageError } from 'beamkeep';
import { exists, writeWhole } from './writeWhole.js';

/**
 * Writes drawings whose names were given, each whole; none, where one of them is there already and may not be written
 * over.
 *
 * @param drawings names (undefined: not asked for) and what goes into them
 * @returns the names written
 * @throws UsageError naming what is there already
 */
export async function writeDrawings(
  drawings: readonly (readonly [path: string | undefined, svg: string])[],
  force: boolean,
): Promise<string[]> {
  const asked = drawings.flatMap(([path, svg]) => (path === undefined ? [] : [{ path, svg }]));
  for (const { path } of force ? [] : asked) {
    if (await exists(path)) throw new UsageError(`${path} is there already; name another file, or add --force`);
  }
  for (const { path, svg } of asked) await writeWhole(path, `${svg}\n`);
  return asked.map(({ path }) => path);
}
