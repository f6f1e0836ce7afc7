import { hour } from '../columns/index.js';
import { robustLeastSquares } from '../statistics/index.js';
import { middle } from './cells.js';
import type { Picture } from './picture.js';

/*
 * The movement read from the structure's temperature: the cycle's loss is a quadratic of the lagged temperature, so
 * that offset and movement come out in half-angles (see optics/movementFit for the formula).
 */

/** Decibels of a turn by the half-angle: 10 log10(2). */
const halfPower = 10 * Math.log10(2);
const lags = [0, 0.5, 1, 1.5, 2, 2.5, 3, 4, 5, 6];

export interface HeatFit {
  readonly lagHours: number;
  /** Share of the variance of the course that the fit explains. */
  readonly explained: number;
  /** Offset of the aim at the mean temperature [half-angles]; left out where the curvature gives no number. */
  readonly offset?: number;
  /** Movement over the daily range of temperature [half-angles]. */
  readonly movement?: number;
  /** Loss that re-aiming would win back on average [dB]. */
  readonly wonDecibels?: number;
}

/** Fits the course on the lagged temperature; nothing without a temperature column or a cycle. */
export function cycleFromHeat({ parts, view }: Pick<Picture, 'parts' | 'view'>): HeatFit | undefined {
  const channel = view.record.temperature;
  if (channel === undefined || channel.time.length < 20 || !parts.cycleFitted) return undefined;
  const { cells, course, slow } = parts;
  const y = course.map((v, c) => v - (slow[c] as number));
  let best: HeatFit | undefined;
  for (const lag of lags) {
    const u = new Float64Array(cells.length);
    for (let c = 0; c < cells.length; c++) u[c] = valueAt(channel, middle(cells, c) - lag * hour);
    const daily = withoutDayMeans(u, Math.round((24 * hour) / cells.width));
    const one = new Float64Array(cells.length).fill(1);
    const squares = daily.map((v) => v * v);
    const fit = robustLeastSquares([one, daily, squares], y, { leastSpread: parts.cellNoise });
    if (best !== undefined && fit.rSquared <= best.explained) continue;
    const [, b = 0, c = 0] = fit.coefficients;
    const swing = range(daily);
    const g = c > 0 ? Math.sqrt(c / halfPower) : Number.NaN;
    const offset = b / (2 * halfPower * g);
    best = {
      lagHours: lag,
      explained: fit.rSquared,
      ...(c > 0 && Math.abs(offset) < 3
        ? { offset: Math.abs(offset), movement: g * swing, wonDecibels: halfPower * offset * offset }
        : {}),
    };
  }
  return best;
}

function valueAt({ time, value }: { time: Float64Array; value: Float64Array }, instant: number): number {
  let low = 0;
  let high = time.length - 1;
  if (instant < (time[0] as number) - 2 * hour || instant > (time[high] as number) + 2 * hour) return Number.NaN;
  while (high - low > 1) {
    const half = (low + high) >>> 1;
    if ((time[half] as number) <= instant) low = half;
    else high = half;
  }
  return Math.abs((time[low] as number) - instant) < Math.abs((time[high] as number) - instant)
    ? (value[low] as number)
    : (value[high] as number);
}

/** Takes a running mean of one day off. */
function withoutDayMeans(values: Float64Array, perDay: number): Float64Array {
  const out = new Float64Array(values.length);
  let sum = 0;
  let n = 0;
  let from = 0;
  let to = 0;
  for (let c = 0; c < values.length; c++) {
    const a = Math.max(0, c - Math.floor(perDay / 2));
    const b = Math.min(values.length, c + Math.ceil(perDay / 2));
    for (; to < b; to++) {
      const v = values[to] as number;
      if (!Number.isNaN(v)) {
        sum += v;
        n++;
      }
    }
    for (; from < a; from++) {
      const v = values[from] as number;
      if (!Number.isNaN(v)) {
        sum -= v;
        n--;
      }
    }
    out[c] = (values[c] as number) - sum / Math.max(1, n);
  }
  return out;
}

function range(values: Float64Array): number {
  const present = values.filter((v) => !Number.isNaN(v)).sort();
  return (present[Math.floor(0.97 * present.length)] ?? 0) - (present[Math.floor(0.03 * present.length)] ?? 0);
}
