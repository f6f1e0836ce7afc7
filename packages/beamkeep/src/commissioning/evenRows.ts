import { UsageError } from '../columns/index.js';

/** Most rows that a log on change is spread to: a day of seconds. */
const mostRows = 100_000;

/**
 * Readings of a log on change, where a value holds until the next line, said again every second, so that a stretch
 * weighs by how long it held.
 *
 * @param time instants of the lines [ms], rising
 * @param values one a line
 * @param end until when the last one holds [ms]
 * @throws UsageError for a log longer than a day
 */
export function evenRows(
  time: Float64Array,
  values: Float64Array,
  end: number,
): { readonly time: Float64Array; readonly values: Float64Array } {
  const first = time[0] ?? end;
  const rows = Math.floor((end - first) / 1000) + 1;
  if (rows > mostRows)
    throw new UsageError('a log on change of more than a day is no test: name its time with --from and --to');
  const even = { time: new Float64Array(rows), values: new Float64Array(rows) };
  let line = 0;
  for (let row = 0; row < rows; row++) {
    const at = first + 1000 * row;
    while (line + 1 < time.length && (time[line + 1] as number) <= at) line++;
    even.time[row] = at;
    even.values[row] = values[line] as number;
  }
  return even;
}
