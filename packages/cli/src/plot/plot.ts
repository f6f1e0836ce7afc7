import type { FindingJson } from 'beamkeep';
import type { Trace } from 'beamkeep/columns';
import type { CauseWord } from 'beamkeep/diagnosis';
import { figure } from '../say/numbers.js';
import { onlyPossible, ordered } from '../say/ordered.js';
import type { Palette } from '../say/palette.js';
import { type Clock, length } from '../say/times.js';
import { wrap } from '../say/wrap.js';
import type { Cells } from './cells.js';
import { type Levels, levels } from './levels.js';
import { rangeOf, raster, rowOf } from './raster.js';

/*
 *     100 % of clean ┤⠒⠒⠒⠒⠢⠤⠤⣀⣀⣀     filled up to the least sample of a stretch, a dot at its median
 *      alarm at 35 % ┤⣿⣿⣿⣿⡇⣿⣿⣿⣿⣿
 *               60 % ┤⣿⣿⣿⣿⡇⣿⣿⣿⣿⣿
 *                    └──────────     broken where there are no samples
 *                     2027-01-01 ...
 *       contamination ━━━━━━━━━━     one line a cause: findings of one cause never overlap
 */

const rowsHigh = 8;
/** Characters left of the plot: the longest word for a cause, a blank, the axis. */
const gutter = 19;

/** What a plot needs to know beside the trace. */
export interface PlotSettings {
  /** Characters in a line. */
  readonly width: number;
  readonly told: Clock;
  readonly cells: Cells;
  readonly colours: Palette;
  /** True level at which the equipment takes the loss for smoke, share of clean air. */
  readonly alarmLevel: number;
  /** Obscuration that means smoke [%], as the site file gives it. */
  readonly alarmThreshold: number;
}

const label = (text: string): string => text.padStart(gutter - 1);

/** One line a cause, the most pressing first: where on the plot its findings lie. */
function bars(
  findings: readonly FindingJson[],
  { from, step }: Levels,
  columns: number,
  settings: PlotSettings,
): string[] {
  const { cells, colours } = settings;
  const columnOf = (instant: string) =>
    Math.min(columns - 1, Math.max(0, Math.floor((Date.parse(instant) - from) / step / cells.across)));
  const lines = new Map<CauseWord, { readonly marks: string[]; readonly paint: (text: string) => string }>();
  for (const finding of ordered(findings)) {
    const line = lines.get(finding.cause) ?? { marks: Array(columns).fill(' '), paint: colours[finding.severity] };
    lines.set(finding.cause, line);
    const first = columnOf(finding.start);
    const last = columnOf(finding.end);
    const mark = first === last ? cells.instant : onlyPossible(finding) ? cells.faintBar : cells.bar;
    line.marks.fill(mark, first, last + 1);
  }
  return [...lines].map(([cause, { marks, paint }]) => `${label(cause)} ${paint(marks.join('').trimEnd())}`);
}

/** A beam's level over time as text, with its findings below; nothing where it has no samples. */
export function plot(trace: Trace, findings: readonly FindingJson[], settings: PlotSettings): string[] {
  const { width, told, cells, colours, alarmLevel, alarmThreshold } = settings;
  const drawn = levels(trace, (width - gutter) * cells.across, told);
  if (drawn === undefined) return [];
  const range = rangeOf(drawn, alarmLevel);
  const dots = raster(drawn, range, rowsHigh * cells.down);
  const columns = Math.ceil(dots.columns / cells.across);
  const alarmRow = Math.floor(rowOf(alarmLevel, range, dots.rows) / cells.down);
  const lines = [...Array(rowsHigh).keys()].map((row) => {
    const characters = [...Array(columns).keys()].map((column) => {
      const character = cells.character(dots, row, column);
      return row === alarmRow && character === ' ' ? colours.act(cells.threshold) : character;
    });
    const name =
      row === alarmRow
        ? `alarm at ${figure(alarmThreshold)} % `
        : row === 0
          ? `${figure(range.top * 100)} % of clean `
          : row === rowsHigh - 1
            ? `${figure(range.bottom * 100)} % `
            : '';
    return `${label(name)}${cells.tick}${characters.join('')}`.trimEnd();
  });
  const axis = [...Array(columns).keys()].map((column) => {
    const inside = drawn.low.subarray(column * cells.across, (column + 1) * cells.across);
    return inside.some((value) => !Number.isNaN(value)) ? cells.axis : ' ';
  });
  const short = drawn.to - drawn.from < 4 * 86_400_000;
  const [left, right] = short
    ? [told.wall(drawn.from), told.wall(drawn.to)]
    : [told.day(drawn.from), told.day(drawn.to)];
  const dates = `${left}${right.padStart(Math.max(columns - left.length, right.length + 1))}`;
  const sign = cells.across === 1 ? 'sign' : 'dot';
  const deeper = drawn.low.some((value) => value < range.bottom) ? '; empty where it went lower' : '';
  const legend = `(a ${sign} across is ${length(drawn.step)}: filled up to its lowest, ${cells.across === 1 ? 'o' : 'a dot'} at its median${deeper})`;
  return [
    ...lines,
    `${label('')}${cells.corner}${axis.join('')}`.trimEnd(),
    `${label('')} ${dates}`,
    ...bars(findings, drawn, columns, settings),
    ...wrap(legend, width, '  ').split('\n').map(colours.faint),
  ];
}
