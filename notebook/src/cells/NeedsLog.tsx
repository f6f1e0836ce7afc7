import type { ComponentChildren } from 'preact';
import { InTurn } from '../parts/InTurn.js';
import { type OpenLog, useLog } from './useLog.js';

/** Shows its content once the log above is read; until then what is missing, in words. */
export function NeedsLog({ cell, children }: { cell: string; children: (log: OpenLog) => ComponentChildren }) {
  const { desk, state } = useLog(cell);
  if (!desk)
    return <p class="empty">This cell reads the nearest log above it, and there is none. Add a log cell above.</p>;
  switch (state.is) {
    case 'read': {
      const { reading, bench } = state;
      return <InTurn of={reading}>{() => children({ desk, reading, bench })}</InTurn>;
    }
    case 'reading':
      return <p class="empty">Waits for the log above to be read.</p>;
    case 'unsited':
      return <p class="empty">Waits for the site of the log above.</p>;
    default:
      return <p class="empty">Nothing to show yet: the log above has not been read.</p>;
  }
}
