import type { Trace } from 'beamkeep/columns';

/** A trace of single samples, for tests. */
export function testTrace(time: readonly number[], level: readonly number[]): Trace {
  const instants = Float64Array.from(time);
  const flat = Float32Array.from(level);
  return {
    time: instants,
    until: instants,
    level: Float64Array.from(level),
    low: flat,
    high: flat,
    spread: new Float32Array(level.length),
    count: new Uint32Array(level.length).fill(1),
  };
}
