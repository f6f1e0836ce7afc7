import { median, quantile } from '../statistics/index.js';
import type { View } from './view.js';

/*
 * Roughness: stretches in which single samples spread more than they usually do. Measured on short runs of rows, from
 * differences of neighbours, so that a change of level does not count.
 */

/** A run of rows and how its samples spread. */
export interface Run {
  readonly from: number;
  readonly to: number;
  /** Spread of the samples, share of clean air. */
  readonly spread: number;
  /** Middle of the depth, share of clean air. */
  readonly middle: number;
  /** Greatest distance from the middle, upwards and downwards, share of clean air. */
  readonly up: number;
  readonly down: number;
}

export interface Roughness {
  readonly runs: readonly Run[];
  /** Usual spread of a run, share of clean air. */
  readonly usual: number;
}

/** Rows in a run: enough to tell a spread. */
const rowsOfRun = 12;

/** Measures how rough each run of a log is. */
export function roughness(view: View, depth: Float64Array): Roughness {
  const { trace } = view;
  const runs: Run[] = [];
  for (let from = 0; from + rowsOfRun / 2 <= depth.length; from += rowsOfRun) {
    const to = Math.min(depth.length, from + rowsOfRun) - 1;
    const values = depth.subarray(from, to + 1);
    const middle = median(values);
    let squares = 0;
    let within = 0;
    for (let i = from + 1; i <= to; i++) {
      squares += ((depth[i] as number) - (depth[i - 1] as number)) ** 2;
      within += (trace.spread[i] as number) ** 2;
    }
    const pairs = to - from;
    let up = 0;
    let down = 0;
    for (let i = from; i <= to; i++) {
      down = Math.max(down, (depth[i] as number) - middle);
      up = Math.max(up, middle - (depth[i] as number));
    }
    runs.push({ from, to, spread: Math.sqrt(squares / pairs / 2 + within / pairs), middle, up, down });
  }
  const spreads = runs.map((r) => r.spread);
  const usual =
    runs.length === 0 ? view.sampleNoise : Math.max(quantile(spreads, 0.35), view.quantum / Math.sqrt(12), 1e-5);
  return { runs, usual };
}

/** Whether a run is rough by both signs alike: noise or shaking, not dust, which only takes light. */
export const isTwoSided = (run: Run, usual: number): boolean =>
  run.spread > 2 * usual && run.up > 0.4 * run.down && run.down > 0.4 * run.up;

/**
 * How much larger the bounds of excursions must be on each row, where the samples spread more for a while.
 *
 * @param rows number of rows
 */
export function roughFactor({ runs, usual }: Roughness, rows: number): Float32Array {
  const factor = new Float32Array(rows).fill(1);
  runs.forEach((run, k) => {
    if (!isTwoSided(run, usual)) return;
    const f = Math.min(8, run.spread / usual);
    for (const near of [runs[k - 1], run, runs[k + 1]]) {
      if (near === undefined) continue;
      for (let i = near.from; i <= near.to; i++) factor[i] = Math.max(factor[i] as number, f);
    }
  });
  return factor;
}
