import { signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/*
 * A log that has been read fills many cells at once. Each waits for its turn, from the top of the sheet down, with a
 * pause after each in which the page answers.
 */

const waiting: (() => void)[] = [];

/** Whether something on the sheet still waits for its turn. */
export const filling = signal(false);

function queue(show: () => void): void {
  waiting.push(show);
  if (filling.value) return;
  filling.value = true;
  setTimeout(next);
}

function next(): void {
  waiting.shift()?.();
  if (waiting.length > 0) setTimeout(next);
  else filling.value = false;
}

const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 200));

/** Comes when nothing has waited for its turn for a moment: what is shown has asked for what it needs. */
export async function filled(): Promise<void> {
  do await pause();
  while (filling.value);
}

interface InTurnProps {
  /** What the content is made of: when this is another, the content waits for its turn anew. */
  readonly of: unknown;
  readonly children: () => ComponentChildren;
}

/** Content that takes a moment to build: nothing until its turn has come. */
export function InTurn({ of, children }: InTurnProps) {
  const [shown, show] = useState<unknown>(undefined);
  useEffect(() => {
    let outdated = false;
    queue(() => {
      if (!outdated) show(of);
    });
    return () => {
      outdated = true;
    };
  }, [of]);
  return shown === of ? children() : null;
}
