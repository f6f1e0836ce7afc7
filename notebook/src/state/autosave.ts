import { effect, signal } from '@preact/signals';
import { get, set } from 'idb-keyval';
import type { Sheet } from '../sheet/sheet.js';
import { openedSheet, sheetText } from '../sheet/sheetFile.js';
import { sheet } from './store.js';

/*
 * The sheet is written to the browser's own storage shortly after each change, and said to be. A stored sheet that
 * cannot be read any more is put aside under another name, not overwritten.
 */

const place = 'beamkeep-sheet';
const damagedPlace = 'beamkeep-sheet-damaged';
const waitMilliseconds = 400;

/** Whether the sheet stands in the browser's storage. */
export type Saved =
  | { readonly is: 'pending' }
  | { readonly is: 'saved'; readonly at: number }
  | { readonly is: 'impossible'; readonly why: string };

export const saved = signal<Saved>({ is: 'pending' });

/** What was kept from the last visit. */
export interface Kept {
  readonly sheet?: Sheet;
  /** Why what was kept could not be read, and its text. */
  readonly damaged?: { readonly why: string; readonly text: string };
}

/** The sheet of the last visit, if one was kept. */
export async function kept(): Promise<Kept> {
  let text: unknown;
  try {
    text = await get(place);
  } catch {
    return {};
  }
  if (typeof text !== 'string') return {};
  try {
    return { sheet: openedSheet(text).sheet };
  } catch (error) {
    await set(damagedPlace, text);
    return { damaged: { why: (error as Error).message, text } };
  }
}

/** Saves the sheet after every change from now on. */
export function keepSaving(): void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  effect(() => {
    const now = sheet.value;
    clearTimeout(timer);
    saved.value = { is: 'pending' };
    timer = setTimeout(() => void save(now), waitMilliseconds);
  });
}

async function save(now: Sheet): Promise<void> {
  try {
    await set(place, sheetText(now));
    if (sheet.value === now) saved.value = { is: 'saved', at: Date.now() };
  } catch (error) {
    saved.value = { is: 'impossible', why: (error as Error).message };
  }
}
