import { type BeamRecord, rowAt } from '../columns/index.js';
import { blockedWithin } from '../numbers/index.js';
import { equipmentObscuration, reached, resetsOf, respondToTrace } from '../response/index.js';
import type { Beam, Site } from '../site/index.js';

/** A signal that a beam's settings give on its log: what a panel's list should hold. */
export interface ExpectedSignal {
  readonly beam: string;
  readonly kind: 'fire' | 'fault' | 'reset';
  /** When it was due: the first sample at or beyond the threshold, and the delay [ms]. */
  readonly time: number;
}

/** A beam with the clean-air reading that its log told. */
export const readBeam = (beam: Beam, { cleanAir }: BeamRecord): Beam =>
  cleanAir === undefined ? beam : { ...beam, cleanAir };

/** Whether samples stand too far apart to show that a total loss came as fast as a blocked beam does. */
export const hidesBlocks = (intervalSeconds: number): boolean => intervalSeconds > blockedWithin.value;

/**
 * The signals that a beam's settings give on its log, in order of time, a latched one counted each time its condition
 * comes anew; and the resets that the site file knows.
 *
 * Where samples stand far apart the equipment, which sees the light all the time, may have signalled up to one
 * interval before; and a total loss, which the settings must then call fire, may have been a blocked beam to it: such
 * a loss stands for both signals.
 */
export function expectedSignals(record: BeamRecord, beam: Beam, site: Site): ExpectedSignal[] {
  const { trace, intervalSeconds } = record;
  const set = { ...readBeam(beam, record), latching: false };
  const { changes } = respondToTrace(trace, set, [], intervalSeconds, site.sampling);
  const signal = (kind: 'fire' | 'fault', since: number): ExpectedSignal => {
    const delay = kind === 'fire' ? beam.alarmDelay : beam.faultDelay;
    return { beam: beam.id, kind, time: since + 1000 * delay };
  };
  const isTotal = (row: number) => reached(equipmentObscuration(set, trace.level[row] as number), beam.faultThreshold);
  const signals = changes.flatMap(({ state, since }): ExpectedSignal[] => {
    const row = rowAt(trace.time, since);
    // What holds from the first sample on began before it, nobody knows when.
    if (state === 'normal' || row === 0 || row === trace.time.length) return [];
    const maybeBlocked = state === 'fire' && hidesBlocks(intervalSeconds) && isTotal(row);
    return [signal(state, since), ...(maybeBlocked ? [signal('fault', since)] : [])];
  });
  const resets = resetsOf(site.visits, beam.id).map((time) => ({ beam: beam.id, kind: 'reset', time }) as const);
  return [...signals, ...resets].sort((a, b) => a.time - b.time);
}
