import { hour } from '../../columns/index.js';
import { rank } from '../grid.js';
import type { NoiseFigures } from './truthFile.js';

/*
 * How small an effect can be and still be asked for. A slow one must pass the largest of 1.5 %, three spreads of an
 * hourly median and one and a half steps of the scale; a fast one three spreads of single samples as well.
 */

/**
 * Noise of a healthy beam and the limits that follow from it.
 *
 * @param time instants [ms]
 * @param noise the beam's own noise [share of clean air]
 * @param step one step of the scale [share of clean air]
 */
export function noiseFigures(time: Float64Array, noise: Float32Array, step: number): NoiseFigures {
  const rounding = step / Math.sqrt(12);
  const sample = Math.hypot(spread(noise), rounding);
  const hourly = Math.max(spread(hourlyMedians(time, noise)), step / 12);
  const slow = Math.max(0.015, 3 * hourly, 1.5 * step);
  return {
    samplePercent: 100 * sample,
    hourlyPercent: 100 * hourly,
    stepPercent: 100 * step,
    slowLimitPercent: 100 * slow,
    fastLimitPercent: 100 * Math.max(slow, 3 * sample),
  };
}

function spread(values: ArrayLike<number>): number {
  let [sum, squares] = [0, 0];
  for (let i = 0; i < values.length; i++) sum += values[i] as number;
  const mean = sum / Math.max(1, values.length);
  for (let i = 0; i < values.length; i++) squares += ((values[i] as number) - mean) ** 2;
  return Math.sqrt(squares / Math.max(1, values.length - 1));
}

/** Medians by the hour; of a log under two hours, by sixtieths of it. At most two thousand of them. */
function hourlyMedians(time: Float64Array, noise: Float32Array): number[] {
  const from = time[0] ?? 0;
  const length = (time[time.length - 1] ?? 0) - from;
  const width = Math.min(hour, Math.max(length / 60, 1));
  const medians: number[] = [];
  let begin = 0;
  for (let i = 1; i <= time.length && medians.length < 2000; i++) {
    const over = i === time.length || (time[i] as number) - (time[begin] as number) >= width;
    if (!over) continue;
    medians.push(rank(noise.subarray(begin, i), 0.5));
    begin = i;
  }
  return medians;
}
