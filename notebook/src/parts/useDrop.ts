import { useSignal } from '@preact/signals';
import type { TargetedDragEvent } from 'preact';

type Dropped = TargetedDragEvent<HTMLElement>;

/** A place on which files can be dropped: whether some hang over it, and what it listens to. */
export interface Drop {
  readonly over: boolean;
  readonly listens: {
    readonly onDragOver: (event: Dropped) => void;
    readonly onDragLeave: () => void;
    readonly onDrop: (event: Dropped) => void;
  };
}

/** Takes the files that are dropped. A second way: a button that does the same stands inside the place. */
export function useDrop(take: (files: File[]) => void): Drop {
  const over = useSignal(false);
  return {
    over: over.value,
    listens: {
      onDragOver: (event) => {
        event.preventDefault();
        over.value = true;
      },
      onDragLeave: () => {
        over.value = false;
      },
      onDrop: (event) => {
        event.preventDefault();
        over.value = false;
        take([...(event.dataTransfer?.files ?? [])]);
      },
    },
  };
}
