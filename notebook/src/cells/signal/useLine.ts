import { useEffect, useState } from 'preact/hooks';
import type { Line, Window } from '../../bench/reading.js';

/** A line and the window that it was made for. */
export interface ShownLine {
  readonly line: Line;
  readonly window: Window;
}

/**
 * The line for a window. While a new one is being made the old one stays, with its own window: the plot changes once,
 * when the new line is there.
 *
 * @param ask asks the bench for the line, or for null where there is none; a new function is a new question
 */
export function useLine(ask: (window: Window) => Promise<Line | null>, window: Window): ShownLine | undefined {
  const [shown, show] = useState<ShownLine>();
  const { from, to } = window;
  useEffect(() => {
    let outdated = false;
    void ask({ from, to }).then((line) => {
      if (!outdated && line) show({ line, window: { from, to } });
    });
    return () => {
      outdated = true;
    };
  }, [ask, from, to]);
  return shown;
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
