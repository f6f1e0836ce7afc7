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
  /** The next rows, in order of time; the block is used again afterwards. */
  rows(block: RowBlock): void;
  /** Called once, after all rows. */
  end(): void;
}
