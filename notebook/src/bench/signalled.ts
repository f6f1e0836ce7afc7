import type { BeamResponseJson } from 'beamkeep';
import type { BeamSignalled, Signalled } from './reading.js';

/**
 * Changes of state as stretches of fire and of fault.
 *
 * @param response what the equipment would have signalled
 * @param last the last sample of the log: a state that holds there ends there [ms]
 */
export function signalled({ id, changes, notes = [] }: BeamResponseJson, last: number): BeamSignalled {
  const stretches: Signalled[] = [];
  for (const [row, { time, state }] of changes.entries()) {
    if (state === 'normal') continue;
    const next = changes[row + 1];
    stretches.push({
      state,
      start: Date.parse(time),
      end: next ? Date.parse(next.time) : Math.max(last, Date.parse(time)),
    });
  }
  return { id, stretches, notes };
}
