import type { Layout, SignalUnit } from 'beamkeep/site';
import type { Peeked } from '../../bench/peek.js';

/*
 * A site being drawn up from the columns of a log: guessed from their names and first values, then set right by a
 * person, then written as a site file.
 */

/** What a column of the log is. */
export const roles = ['time', 'beam', 'temperature', 'humidity', 'gain', 'plant', 'nothing'] as const;
export type Role = (typeof roles)[number];

/** A beam being drawn up; numbers as typed. */
export interface BeamDraft {
  readonly column: string;
  readonly layout: Layout;
  readonly separation: string;
  readonly unit: SignalUnit;
  readonly alarm: string;
  readonly fault: string;
}

/** A site being drawn up. */
export interface SiteDraft {
  readonly name: string;
  readonly timeZone: string;
  readonly roles: readonly Role[];
  /** One a column, whether it is a beam or not: nothing typed is lost when a role is tried out. */
  readonly beams: readonly BeamDraft[];
}

/** A first draft: a guess that a person looks over. */
export function guessed({ columns, rows }: Peeked, timeZone: string): SiteDraft {
  return {
    name: '',
    timeZone,
    roles: columns.map((column, i) =>
      guessedRole(
        column,
        i,
        rows.map((row) => row[i] ?? ''),
      ),
    ),
    beams: columns.map((column, i) => ({
      column,
      layout: 'reflective',
      separation: '',
      unit: guessedUnit(rows.map((row) => row[i] ?? '')),
      alarm: '35',
      fault: '90',
    })),
  };
}

function guessedRole(column: string, row: number, cells: readonly string[]): Role {
  if (row === 0) return 'time';
  const name = column.toLowerCase();
  if (/temp|^t_|_t$|deg ?c|°c/.test(name)) return 'temperature';
  if (/hum|^rh|_rh/.test(name)) return 'humidity';
  if (/gain/.test(name)) return 'gain';
  if (/plant|running/.test(name)) return 'plant';
  if (/time|date|clock/.test(name)) return 'time';
  return cells.some((cell) => !Number.isNaN(numberIn(cell))) ? 'beam' : 'nothing';
}

function guessedUnit(cells: readonly string[]): SignalUnit {
  const values = cells.map(numberIn).filter((value) => !Number.isNaN(value));
  if (values.length > 0 && values.every((value) => value <= 1) && values.some((value) => value < 0)) return 'decibels';
  return values.some((value) => value > 150) ? 'counts' : 'percent';
}

const numberIn = (cell: string): number => {
  const bare = cell.replace('%', '').trim().replace(',', '.');
  return bare === '' ? Number.NaN : Number(bare);
};

/** The site file of a draft, as text. */
export function siteOf({ name, timeZone, roles: chosen, beams }: SiteDraft, columns: readonly string[]): string {
  const named = (role: Role): readonly string[] => columns.filter((_, i) => chosen[i] === role);
  const [temperatureColumn] = named('temperature');
  const [humidityColumn] = named('humidity');
  const [gainColumn] = named('gain');
  const [plantColumn] = named('plant');
  const [time, clock] = named('time');
  return JSON.stringify(
    {
      format: 'beamkeep-site/1',
      name: name || undefined,
      timeZone,
      timeColumn: clock === undefined ? time : [time, clock],
      beams: beams
        .filter((_, i) => chosen[i] === 'beam')
        .map(({ column, layout, separation, unit, alarm, fault }) => ({
          id: column,
          layout,
          separation: numberIn(separation),
          signalColumn: column,
          signalUnit: unit,
          temperatureColumn,
          humidityColumn,
          gainColumn,
          plantColumn,
          alarmThreshold: numberIn(alarm),
          faultThreshold: numberIn(fault),
        })),
    },
    null,
    2,
  );
}
