import type { BeamRecord, Trace } from '../columns/index.js';
import type { Beam, Site } from '../site/index.js';
import { type LocalClock, localClock } from './localClock.js';
import { sampleNoise } from './noise.js';

/** Decibels that a share of the light is worth: 10 log10. */
export const tenLog = 10 / Math.LN10;

/** Least share of clean air told from darkness: 40 dB. */
const darkest = 1e-4;

/** One beam's record made ready: loss in decibels, the local clock, and how fine a change can be seen. */
export interface View {
  readonly record: BeamRecord;
  readonly beam: Beam;
  readonly site: Site;
  readonly clock: LocalClock;
  readonly trace: Trace;
  /** Loss of each row [dB]; 0 clean, 40 at most. */
  readonly loss: Float64Array;
  /** Spread of single samples, share of clean air. */
  readonly sampleNoise: number;
  readonly quantum: number;
  /** Usual interval between samples [ms]. */
  readonly interval: number;
  readonly from: number;
  readonly to: number;
}

/** Loss of a level [dB]. */
export const lossOf = (level: number): number => -tenLog * Math.log(Math.max(level, darkest));
/** Level after a loss, share of clean air. */
export const levelOf = (loss: number): number => Math.exp(-loss / tenLog);

/** Makes a record ready; nothing when it holds no sample. */
export function view(record: BeamRecord, beam: Beam, site: Site): View | undefined {
  const { trace, quantum } = record;
  const n = trace.time.length;
  if (n === 0) return undefined;
  const from = trace.time[0] as number;
  const to = trace.until[n - 1] as number;
  const loss = new Float64Array(n);
  for (let i = 0; i < n; i++) loss[i] = lossOf(trace.level[i] as number);
  return {
    record,
    beam,
    site,
    clock: localClock(site.timeZone, from, to),
    trace,
    loss,
    sampleNoise: sampleNoise(trace, quantum),
    quantum,
    interval: record.intervalSeconds * 1000,
    from,
    to,
  };
}
