import { hour } from '../../columns/index.js';
import type { Picture } from '../picture.js';
import { isTwoSided } from '../roughness.js';

/** A stretch in which the samples spread more, up and down alike. */
export interface RoughStretch {
  readonly start: number;
  readonly end: number;
  readonly from: number;
  readonly to: number;
  /** Spread of the samples over the usual. */
  readonly times: number;
  /** Spread of the samples, share of clean air. */
  readonly spread: number;
  /** Greatest deviation over the spread: 1.4 for a sine, 3 and more for spikes. */
  readonly crest: number;
  /** Least autocorrelation of neighbouring samples, sign turned: near 1 for a steady swing, near 0 for noise. */
  readonly swing: number;
  /** Share of its runs that spread up and down alike. */
  readonly twoSided: number;
}

/** Rows looked at for a swing, and the longest lag [rows]. */
const swingRows = 2048;
const swingLag = 128;

function steadySwing(depth: Float64Array): number {
  const from = Math.max(0, (depth.length - swingRows) >> 1);
  const own = depth.subarray(from, from + swingRows);
  let sum = 0;
  for (const v of own) sum += v;
  const mean = sum / own.length;
  const off = own.map((v) => v - mean);
  let power = 0;
  for (const v of off) power += v ** 2;
  let least = 0;
  for (let lag = 1; lag <= Math.min(swingLag, own.length >> 2); lag++) {
    least = Math.min(least, (together(off, lag) / Math.max(power, 1e-12)) * (own.length / (own.length - lag)));
  }
  return -least;
}

/** Sum of the products of values so many rows apart. */
function together(off: Float64Array, lag: number): number {
  let sum = 0;
  for (let i = lag; i < off.length; i++) sum += (off[i] as number) * (off[i - lag] as number);
  return sum;
}

/** The rough stretches of a beam, runs a few apart joined. */
export function roughStretches({ rough, view, slowLimit, depth, parts }: Picture): RoughStretch[] {
  const { runs, usual } = rough;
  const { time, until } = view.trace;
  const joined: { runs: number[] }[] = [];
  runs.forEach((run, k) => {
    // A step within a run spreads it, and is no noise.
    if (parts.steps.some((s) => s.row >= run.from - 1 && s.row <= run.to + 1)) return;
    if (run.spread <= 2 * usual || run.up + run.down < 1.6 * slowLimit) return;
    const last = joined.at(-1);
    const before = last?.runs.at(-1);
    if (last !== undefined && before !== undefined && k - before <= 4) last.runs.push(k);
    else joined.push({ runs: [k] });
  });
  return (
    joined
      .filter((j) => j.runs.length >= 2)
      .map((j) => {
        const own = j.runs.map((k) => runs[k]).filter((r) => r !== undefined);
        const from = own[0]?.from ?? 0;
        const to = own.at(-1)?.to ?? 0;
        const spread = Math.sqrt(own.reduce((a, r) => a + r.spread ** 2, 0) / own.length);
        const most = Math.max(...own.map((r) => Math.max(r.up, r.down)));
        return {
          start: time[from] as number,
          end: until[to] as number,
          from,
          to,
          times: spread / usual,
          spread,
          crest: most / Math.max(spread, 1e-9),
          swing: steadySwing(depth.subarray(from, to + 1)),
          twoSided: own.filter((r) => isTwoSided(r, usual)).length / own.length,
        };
      })
      .filter((r) => r.end - r.start < 400 * hour || r.times > 2.5)
      // What only takes light is dust, unless it swings: a mount that shakes about the peak.
      .filter((r) => r.twoSided >= 0.5 || (r.swing > 0.45 && isShaking(r)))
  );
}

/** Whether a rough stretch is a swing rather than noise: neighbours follow each other up and down, without spikes. */
export const isShaking = (r: RoughStretch): boolean =>
  r.swing > 0.3 + 3.5 / Math.sqrt(r.to - r.from + 1) && r.crest < 3.5;
