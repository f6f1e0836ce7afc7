import { signal } from '@preact/signals';

/** Work on the sheet as a whole that takes its time. */
export interface AtWork {
  /** What is being done, in words. */
  readonly what: string;
  /** How far it has come [0 to 1]. */
  readonly share: number;
  /** Gives it up. */
  readonly stop: () => void;
}

export const atWork = signal<AtWork | null>(null);

/** Tells how far a piece of work has come. */
export type Tell = (share: number) => void;

/**
 * Does work that is shown with its progress and can be stopped. One at a time: while one is going on, nothing else is
 * begun.
 */
export async function shown<T>(
  what: string,
  work: (tell: Tell, signal: AbortSignal) => Promise<T>,
): Promise<T | undefined> {
  if (atWork.value) return undefined;
  const control = new AbortController();
  const stop = (): void => control.abort();
  let over = false;
  // A worker's word can come after its answer.
  const tell = (share: number): void => {
    if (!over) atWork.value = { what, share, stop };
  };
  tell(0);
  try {
    return await work(tell, control.signal);
  } catch (error) {
    if (control.signal.aborted) return undefined;
    throw error;
  } finally {
    over = true;
    atWork.value = null;
  }
}
