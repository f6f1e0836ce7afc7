import { signal } from '@preact/signals';

/** Something to tell that belongs to no cell. */
export interface Notice {
  readonly what: string;
  /** A text that would otherwise be lost, offered for saving. */
  readonly rescue?: { readonly name: string; readonly text: string };
}

export const notice = signal<Notice | null>(null);
