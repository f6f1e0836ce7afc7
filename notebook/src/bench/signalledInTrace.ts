import type { BeamRecord } from 'beamkeep/columns';
import { respondToTrace } from 'beamkeep/response';
import type { Beam, Sampling, Visit } from 'beamkeep/site';
import type { BeamSignalled } from './reading.js';
import { signalled } from './signalled.js';

/**
 * What the equipment of one beam would have signalled, from its condensed log.
 *
 * @param beam of the site
 * @param record what was read of it; none where the log holds nothing
 */
export function signalledInTrace(
  beam: Beam,
  record: BeamRecord | undefined,
  visits: readonly Visit[],
  sampling: Sampling,
): BeamSignalled[] {
  if (!record) return [];
  const { trace, intervalSeconds, cleanAir } = record;
  const read = cleanAir === undefined ? beam : { ...beam, cleanAir };
  const { changes } = respondToTrace(trace, read, visits, intervalSeconds, sampling);
  const told = changes.map(({ time, state }) => ({ time: new Date(time).toISOString(), state }));
  return [signalled({ id: beam.id, changes: told, assumed: [] }, trace.until.at(-1) ?? Number.NaN)];
}
