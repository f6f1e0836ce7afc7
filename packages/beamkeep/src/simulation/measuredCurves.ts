import { UsageError } from '../columns/index.js';
import type { MeasuredCurve } from './effects/measured.js';

/** A curve of a file of measured smoke, by the name of its column. */
export interface NamedCurve extends MeasuredCurve {
  readonly name: string;
}

/**
 * The curves in a CSV of measured smoke: a column `time_s`, and columns ending in `_pct_per_m` (transmission of one
 * metre, %) or `_od_per_m` (optical density per metre, decimal); other columns are left out.
 *
 * @param text the CSV
 * @throws UsageError when there is no such column
 */
export function measuredCurves(text: string): NamedCurve[] {
  const [header = '', ...rows] = text.trim().split(/\r?\n/);
  const names = header.split(',');
  const cells = rows.map((row) => row.split(',').map((cell) => (cell === '' ? Number.NaN : Number(cell))));
  const clock = names.indexOf('time_s');
  const curves = names.flatMap((name, k): NamedCurve[] => {
    const percent = name.endsWith('_pct_per_m');
    if (!percent && !name.endsWith('_od_per_m') && name !== 'od_per_m') return [];
    const perMetre = cells.map((row) => {
      const value = row[k] ?? Number.NaN;
      return percent ? value / 100 : 10 ** -value;
    });
    return [{ name, seconds: cells.map((row) => row[clock] ?? Number.NaN), perMetre }];
  });
  if (clock < 0 || curves.length === 0) {
    throw new UsageError('measuredCurves: the file needs a column time_s and one that ends in _pct_per_m or _od_per_m');
  }
  return curves;
}
