import { randomBytes } from 'node:crypto';
import { open, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { UsageError } from 'beamkeep/columns';

/** Whether something of this name exists. */
export async function exists(path: string): Promise<boolean> {
  try {
    await stat(path);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return false;
    throw error;
  }
}

/**
 * Writes a file whole or not at all: under another name in the same folder, forced to the disk, then renamed, so that
 * no reader and no power cut ever meets half of it.
 *
 * @throws UsageError when the folder or the disk refuses
 */
export async function writeWhole(path: string, content: Uint8Array | string): Promise<void> {
  const draft = join(dirname(path), `.${basename(path)}.${randomBytes(6).toString('hex')}`);
  try {
    const file = await open(draft, 'wx');
    try {
      await file.writeFile(content);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(draft, path);
  } catch (error) {
    await rm(draft, { force: true }).catch(() => undefined);
    throw new UsageError(`${path}: cannot be written (${(error as Error).message})`);
  }
}
