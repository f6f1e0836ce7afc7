import type { BeamSignalled, Signalled } from '../../bench/reading.js';

/** A stretch of light lost, with its first and last instant [ms]. */
interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** Fire signals that begin within one of some stretches. */
export function fires(
  signalled: readonly BeamSignalled[] | null,
  beam: string,
  stretches: readonly Stretch[],
): Signalled[] {
  const mine = signalled?.find(({ id }) => id === beam)?.stretches ?? [];
  return mine.filter(
    ({ state, start }) => state === 'fire' && stretches.some((one) => start >= one.start && start <= one.end),
  );
}
