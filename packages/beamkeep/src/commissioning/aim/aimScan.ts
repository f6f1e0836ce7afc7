import { UsageError } from '../../columns/index.js';
import { linearReading, quoted, type SignalUnit } from '../../site/index.js';
import type { NamedRows } from '../proof/panelList.js';

/** In what a scan tells where the head pointed. */
export const angleUnits = ['degrees', 'milliradians', 'millimetres'] as const;

/** `millimetres`: how far the spot stands off at the far end. */
export type AngleUnit = (typeof angleUnits)[number];

/** An aim scan: the level at each place of the head, over one axis or two. */
export interface AimScan {
  /** Names of the axes. */
  readonly axes: readonly string[];
  /** Turn of the head, one column an axis [degrees]. */
  readonly angles: readonly Float64Array[];
  /** Received power [any unit proportional to it]; NaN where missing. */
  readonly power: Float64Array;
  /** Readings as written [signalUnit]. */
  readonly readings: Float64Array;
  /** Lines that hold no reading, in words. */
  readonly notes: readonly { readonly line: number; readonly what: string }[];
}

/** What has to be known to read a scan. */
export interface AimScanOptions {
  readonly signalUnit: SignalUnit;
  /** Distance between the two ends [m]: it turns millimetres at the far end into degrees. */
  readonly separation: number;
  readonly angleUnit?: AngleUnit | undefined;
  /** Column of the level; the beam's signalColumn, a column "level", or the last one when left out. */
  readonly level?: string | undefined;
  /** One or two columns of angles; all others but time when left out. */
  readonly angles?: readonly string[] | undefined;
  /** The beam's column in its logs. */
  readonly signalColumn?: string | undefined;
}

/** A table whose cells can be read as numbers. */
export interface NumberRows extends NamedRows {
  /** The number in a cell; NaN where it is empty, undefined where it is something else. */
  numberIn(cell: string): number | undefined;
}

const perUnit: Readonly<Record<AngleUnit, (value: number, separation: number) => number>> = {
  degrees: (value) => value,
  milliradians: (value) => (value / 1000) * (180 / Math.PI),
  millimetres: (value, separation) => Math.atan(value / 1000 / separation) * (180 / Math.PI),
};

/** An angle in degrees. */
export const inDegrees = (value: number, unit: AngleUnit, separation: number): number =>
  perUnit[unit](value, separation);

/**
 * An aim scan from a table.
 *
 * @param table header and rows: one or two angles and a level, in any order of places
 * @param options units, and which columns
 * @throws UsageError where columns are missing or in doubt; it says how to name them
 */
export function aimScanOf(table: NumberRows, options: AimScanOptions): AimScan {
  const { signalUnit, separation, angleUnit = 'degrees' } = options;
  const level = levelColumn(table, options);
  const axes = angleColumns(table, level, options);
  const notes: { line: number; what: string }[] = [];
  const numberAt = (row: NamedRows['rows'][number], column: number): number => {
    const value = table.numberIn(row.cells[column] as string);
    if (value === undefined) notes.push({ line: row.line, what: `not a number: ${quoted(row.cells[column])}` });
    return value ?? Number.NaN;
  };
  const readings = Float64Array.from(table.rows, (row) => numberAt(row, level));
  const angles = axes.map((column) =>
    Float64Array.from(table.rows, (row) => inDegrees(numberAt(row, column), angleUnit, separation)),
  );
  const usable = readings.filter((reading, row) =>
    [reading, ...angles.map((column) => column[row])].every(Number.isFinite),
  );
  const needed = leastReadings(axes.length);
  if (usable.length < needed) {
    const [first] = notes;
    throw new UsageError(
      `${table.file}: ${usable.length} of its lines hold angle and reading, and a lobe over ${axes.length} ` +
        `${axes.length === 1 ? 'axis' : 'axes'} needs ${needed} or more${first ? `; line ${first.line}: ${first.what}` : ''}`,
    );
  }
  return {
    axes: axes.map((column) => table.names[column] as string),
    angles,
    power: readings.map((reading) => linearReading(reading, signalUnit)),
    readings,
    notes,
  };
}

/** A lobe has a peak, a floor, and a centre and a half-angle an axis; one reading more shows whether they fit. */
const leastReadings = (axes: number): number => 2 + 2 * axes + 1;

function columnNamed({ file, names }: NamedRows, name: string, option: string): number {
  const column = names.indexOf(name);
  if (column < 0)
    throw new UsageError(`${file}:1: no column ${quoted(name)} (${option}); it has ${names.map(quoted).join(', ')}`);
  return column;
}

function levelColumn(table: NamedRows, { level, signalColumn }: AimScanOptions): number {
  if (level !== undefined) return columnNamed(table, level, '--level');
  const known = [signalColumn, 'level'].map((name) => (name === undefined ? -1 : table.names.indexOf(name)));
  return known.find((column) => column >= 0) ?? table.names.length - 1;
}

function angleColumns(table: NamedRows, level: number, { angles }: AimScanOptions): number[] {
  if (angles !== undefined && (angles.length < 1 || angles.length > 2))
    throw new UsageError(`--angles names ${angles.length} columns: a scan has one or two axes`);
  if (angles !== undefined) return angles.map((name) => columnNamed(table, name, '--angles'));
  const others = table.names.flatMap((name, column) =>
    column === level || /^(time|date|timestamp)$/i.test(name) ? [] : [column],
  );
  if (others.length === 1 || others.length === 2) return others;
  throw new UsageError(
    `${table.file}:1: a scan has one or two columns of angles and one of the level, and this has ` +
      `${table.names.map(quoted).join(', ')}: name them with --angles and --level`,
  );
}
