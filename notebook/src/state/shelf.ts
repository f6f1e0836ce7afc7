import { createStore, del, get, keys, set } from 'idb-keyval';
import type { LogFile } from '../bench/reading.js';

/*
 * The shelf holds the dropped log files, under a key that the sheet names: in memory, and in the browser's own
 * storage where there is any, so that a sheet finds its log again. Nothing leaves this machine.
 */

const store = createStore('beamkeep-shelf', 'logs');
const atHand = new Map<string, readonly LogFile[]>();

/** Puts files on the shelf. False: they are at hand now, but the browser would not keep them for the next time. */
export async function shelve(key: string, files: readonly LogFile[]): Promise<boolean> {
  atHand.set(key, files);
  try {
    await set(key, files, store);
    return true;
  } catch {
    return false;
  }
}

/** Files from the shelf; undefined when they are not there any more. */
export async function fromShelf(key: string): Promise<readonly LogFile[] | undefined> {
  const files = atHand.get(key);
  if (files) return files;
  try {
    const kept = await get<readonly LogFile[]>(key, store);
    if (kept) atHand.set(key, kept);
    return kept;
  } catch {
    return undefined;
  }
}

/** Clears everything from the shelf that no key of these names. */
export async function tidyShelf(inUse: ReadonlySet<string>): Promise<void> {
  for (const key of atHand.keys()) if (!inUse.has(key)) atHand.delete(key);
  try {
    for (const key of await keys<string>(store)) if (!inUse.has(key)) await del(key, store);
  } catch {
    // No storage, nothing to tidy.
  }
}
