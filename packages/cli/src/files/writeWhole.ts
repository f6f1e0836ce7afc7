import { randomBytes } from 'node:crypto';
import { open, rename, rm, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import type { Readable } from 'node:stream';
import { UsageError } from 'beamkeep/columns';

/** Whether something of this name exists. */
export async function exists(path: string): Promise<boolean> {
  try {
    await stat(path);
    return true;
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return false;
    throw refusedWriting(path, error);
  }
}

const codeOf = (error: unknown): string => (error instanceof Error && 'code' in error ? String(error.code) : '');

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'its folder is not there',
  ENOTDIR: 'a part of the path is a file, not a folder',
  EEXIST: 'it is a file, not a folder',
  EISDIR: 'it is a folder',
  EACCES: 'this user may not write there',
  EPERM: 'this user may not write there',
  EROFS: 'the disk can only be read',
  ENOSPC: 'the disk is full',
  EDQUOT: 'this user may not fill more of the disk',
  EFBIG: 'it grows beyond what one file may hold here',
};

/** What the system says when it refuses to write, in words; what is not about files is passed on as it is. */
export function refusedWriting(path: string, error: unknown): unknown {
  const code = codeOf(error);
  if (!/^E[A-Z]+$/.test(code)) return error;
  return new UsageError(`${path}: cannot be written: ${reasons[code] ?? code}`);
}

/**
 * Writes a file whole or not at all: under another name in the same folder, forced to the disk, then renamed, so that
 * no reader and no power cut ever meets half of it.
 *
 * @param content all of it, or a stream of it
 * @throws UsageError when the folder or the disk refuses
 */
export async function writeWhole(path: string, content: string | Readable): Promise<void> {
  const draft = join(dirname(path), `.${basename(path)}.${randomBytes(6).toString('hex')}`);
  try {
    const file = await open(draft, 'wx');
    try {
      await writeFile(file, content);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(draft, path);
  } catch (error) {
    await rm(draft, { force: true }).catch(() => undefined);
    throw refusedWriting(path, error);
  }
}
