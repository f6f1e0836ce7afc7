import { useEffect, useState } from 'preact/hooks';
import type { Line, Window } from '../../bench/reading.js';

/** A line and the window that it was made for. */
export interface ShownLine<L extends Line = Line> {
  readonly line: L;
  readonly window: Window;
}

/** The line to show, and whether that of the last question will not come. */
interface LineAsked<L extends Line> {
  readonly shown?: ShownLine<L> | undefined;
  readonly failed: boolean;
}

/**
 * The line for a window. While a new one is being made the old one stays, with its own window: the plot changes once,
 * when the new line is there.
 *
 * @param ask asks the bench for the line, or for null where there is none; a new function is a new question
 */
export function useLine<L extends Line>(ask: (window: Window) => Promise<L | null>, window: Window): LineAsked<L> {
  const [asked, answered] = useState<LineAsked<L>>({ failed: false });
  const { from, to } = window;
  useEffect(() => {
    let outdated = false;
    answered((last) => (last.failed ? { ...last, failed: false } : last));
    ask({ from, to }).then(
      (line) => {
        if (!outdated && line) answered({ shown: { line, window: { from, to } }, failed: false });
      },
      () => {
        if (!outdated) answered(({ shown }) => ({ shown, failed: true }));
      },
    );
    return () => {
      outdated = true;
    };
  }, [ask, from, to]);
  return asked;
}

/** What a line shows at an instant: the value before it, or NaN in a gap and outside. */
export function valueAt({ time, value }: Line, instant: number): number {
  let low = 0;
  let high = time.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((time[middle] as number) <= instant) low = middle + 1;
    else high = middle;
  }
  return value[low - 1] ?? Number.NaN;
}
