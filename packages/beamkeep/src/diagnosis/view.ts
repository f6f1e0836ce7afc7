import { type BeamRecord, minute, second, type Trace } from '../columns/index.js';
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
  const { quantum } = record;
  const interval = record.intervalSeconds * 1000;
  const trace = site.sampling === 'on-change' ? asSampled(record.trace, interval) : record.trace;
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
    interval,
    from,
    to,
  };
}

/**
 * Longest that a value held is said once [ms]: an hour needs some; intervals from which it is said again by a slow logger, and
 * by a quick one; intervals within which a quick one has looked again when the value changes. Own choice.
 */
const sparsest = 15 * minute;
const saidAgain = { slow: 1.25, quick: 0.95, next: 1.5 };

/**
 * The rows of an on-change log as the logger took them. What is held is repeated in a trace every minute and a second before
 * it changes; a logger that looks once in a quarter of an hour has not seen fifteen samples alike, and its noise would pass
 * for flat objects, nor has one that looks every ten seconds seen each sample twice, and its noise would pass for growth.
 */
function asSampled(trace: Trace, interval: number): Trace {
  const { time, until, level, low, high, spread, count } = trace;
  const quick = saidAgain.slow * interval <= minute;
  const least = quick ? saidAgain.quick * interval : saidAgain.slow * Math.min(interval, sparsest);
  const kept: number[] = [];
  let last = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < time.length; i++) {
    const now = time[i] as number;
    const next = time[i + 1] ?? Number.POSITIVE_INFINITY;
    const repeated = i + 1 < time.length && count[i] === 1 && level[i] === level[i - 1];
    // Said a second before the change, though the sample that changed is the next one that was taken.
    const between = quick && next - now <= second && next - last < saidAgain.next * interval;
    if (repeated && (now - last < least || between)) continue;
    kept.push(i);
    last = now;
  }
  return {
    time: Float64Array.from(kept, (i) => time[i] as number),
    until: Float64Array.from(kept, (i) => until[i] as number),
    level: Float64Array.from(kept, (i) => level[i] as number),
    low: Float32Array.from(kept, (i) => low[i] as number),
    high: Float32Array.from(kept, (i) => high[i] as number),
    spread: Float32Array.from(kept, (i) => spread[i] as number),
    count: Uint32Array.from(kept, (i) => count[i] as number),
  };
}
