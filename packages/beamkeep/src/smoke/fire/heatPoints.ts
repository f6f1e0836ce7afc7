import { UsageError } from '../../columns/index.js';
import type { HeatPoint } from './designFire.js';

/**
 * Points of a heat release curve from text: a line a point, seconds and kW, with a comma, a semicolon, a tab or blanks
 * between them; a head line and empty lines are passed over.
 *
 * @param text of the file
 * @param name of the file, for errors
 * @throws UsageError naming the first line that is not two numbers
 * @example heatPoints('time_s,heat_kw\n0,0\n60,200', 'burn.csv') // [[0, 0], [60, 200]]
 */
export function heatPoints(text: string, name: string): HeatPoint[] {
  const points: HeatPoint[] = [];
  text.split(/\r\n|\r|\n/).forEach((line, i) => {
    const cells = line
      .replace(/^\uFEFF/, '')
      .trim()
      .split(/[;,\t ]+/);
    if (cells.length === 1 && cells[0] === '') return;
    const [seconds = Number.NaN, heat = Number.NaN] = cells.map(Number);
    if (cells.length >= 2 && !Number.isNaN(seconds) && !Number.isNaN(heat)) points.push([seconds, heat]);
    else if (points.length > 0 || i > 0) {
      throw new UsageError(`${name}:${i + 1}: "${line.slice(0, 60)}" is not two numbers, seconds and kW`);
    }
  });
  return points;
}
