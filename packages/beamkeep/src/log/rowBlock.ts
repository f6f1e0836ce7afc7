import type { Site } from '../site/index.js';

/** Rows of a log, in order of time: columns of equal length. They are only valid until the sink returns. */
export interface RowBlock {
  /** Instants [ms since 1970-01-01 UTC], strictly rising, from block to block as well. */
  readonly time: Float64Array;
  /** One column for each name told to `header`, as logged; NaN where the value is missing. */
  readonly columns: readonly Float64Array[];
  /** Number of rows. */
  readonly count: number;
}

/** Which columns the blocks hold, and whose they are. */
export interface RowColumns {
  /** Names of the columns in the log. */
  readonly names: readonly string[];
  /** For each beam of the site, in order: the column that holds its readings. */
  readonly signal: readonly number[];
  /**
   * With `sampling` on-change: for each column, how many usable values the lines have said so far. The blocks hold more,
   * because a value stands in every row until the next one.
   */
  readonly stated: Float64Array<ArrayBuffer>;
  /** The column of a name; undefined where the log has none. */
  of(name: string | undefined): number | undefined;
}

/** Takes the rows of a log as they are read. */
export interface RowSink {
  /** Called once, before any rows. */
  header(columns: RowColumns): void;
  rows(block: RowBlock): void;
  /** Called once, after all rows. */
  end(): void;
}

/** A column that a site wants from its log: by name, or the only other one beside time. */
export interface WantedColumn {
  readonly name: string | undefined;
  /** Which beam wants it, as messages say it; the first, where several do. */
  readonly by: string;
  /** A log without it cannot be used. */
  readonly needed: boolean;
}

/** The columns that a site wants, each once: the signals first, in order of the beams. */
export function wantedColumns(site: Site): WantedColumn[] {
  const wanted: WantedColumn[] = [];
  const add = (name: string | undefined, by: string, needed: boolean) => {
    if (!wanted.some((known) => known.name === name)) wanted.push({ name, by, needed });
  };
  site.beams.forEach((beam, row) => {
    add(beam.signalColumn, `beams[${row}] signalColumn`, true);
  });
  site.beams.forEach((beam, row) => {
    for (const key of ['temperatureColumn', 'humidityColumn', 'gainColumn', 'plantColumn'] as const) {
      if (beam[key] !== undefined) add(beam[key], `beams[${row}] ${key}`, true);
    }
  });
  return wanted;
}
