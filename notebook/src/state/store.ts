import { computed, signal } from '@preact/signals';
import { begun, canRedo, canUndo, edited, type History, present, redone, undone } from '../sheet/history.js';
import { freshSheet, type Sheet } from '../sheet/sheet.js';

/** The open sheet with its past and its undone future. */
const history = signal<History<Sheet>>(begun(freshSheet()));

/** The open sheet. */
export const sheet = computed(() => present(history.value));
export const undoable = computed(() => canUndo(history.value));
export const redoable = computed(() => canRedo(history.value));

/**
 * Changes the sheet.
 *
 * @param change from the sheet to the next; giving back the same sheet is no step
 * @param mark edits in a row with the same mark are one step of undo
 */
export function edit(change: (now: Sheet) => Sheet, mark?: string): void {
  history.value = edited(history.value, change(sheet.value), mark);
}

export const undo = (): void => {
  history.value = undone(history.value);
};

export const redo = (): void => {
  history.value = redone(history.value);
};

/** Begins anew with another sheet, whose past is empty. */
export const begin = (other: Sheet): void => {
  history.value = begun(other);
};

/** Puts another sheet in place of this one, as a step that can be undone. */
export const replace = (other: Sheet): void => edit(() => other);
