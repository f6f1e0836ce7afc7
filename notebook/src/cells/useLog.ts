import { useComputed } from '@preact/signals';
import type { Remote } from 'comlink';
import type { Bench } from '../bench/bench.js';
import type { Reading, Window } from '../bench/reading.js';
import { logAbove } from '../sheet/edits.js';
import { type Desk, deskOf, type LogState } from '../state/desk.js';
import { sheet } from '../state/store.js';

/** What a cell sees of the log above it. */
export interface LogSeen {
  readonly desk: Desk | undefined;
  readonly state: LogState;
}

/** The log that a cell reads. */
export function useLog(cell: string): LogSeen {
  // The one thing of the sheet that matters here: other edits leave the cell alone.
  const above = useComputed(() => logAbove(sheet.value, cell)?.id).value;
  if (above === undefined) return { desk: undefined, state: { is: 'nothing' } };
  const desk = deskOf(above);
  return { desk, state: desk.state.value };
}

/** A log that has been read. */
export interface OpenLog {
  readonly desk: Desk;
  readonly reading: Reading;
  readonly bench: Remote<Bench>;
}

/** The whole of a log as a window; a log of one instant is a minute long. */
export const wholeOf = ({ from, to }: Reading): Window =>
  to > from ? { from, to } : { from: from - 30_000, to: from + 30_000 };
