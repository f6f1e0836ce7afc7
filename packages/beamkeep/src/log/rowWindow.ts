/*
 * Rows on their way from the lines to the sink. The last ones are held back, so that lines that stand out of order
 * can be put in their place; see order.ts. One block of memory holds all columns: column c begins at c * capacity.
 */

/** Rows held back. */
export interface RowWindow {
  /** Number of columns. */
  readonly width: number;
  /** Rows that there is room for. */
  capacity: number;
  /** Rows held. */
  count: number;
  /** Instants [ms]. */
  time: Float64Array;
  /** Line of each row. */
  line: Uint32Array;
  /** The columns, one after the other. */
  values: Float64Array;
  /** Whether some row is not later than the one before it. */
  disordered: boolean;
  /** Instant of the last row that left the window [ms]. */
  lastLeft: number;
}

/** An empty window. */
export function rowWindow(width: number, capacity: number): RowWindow {
  return {
    width,
    capacity,
    count: 0,
    time: new Float64Array(capacity),
    line: new Uint32Array(capacity),
    values: new Float64Array(capacity * width),
    disordered: false,
    lastLeft: Number.NEGATIVE_INFINITY,
  };
}

/** Makes room for more rows. */
export function grow(window: RowWindow, capacity: number): void {
  const { width, count } = window;
  const time = new Float64Array(capacity);
  time.set(window.time.subarray(0, count));
  const line = new Uint32Array(capacity);
  line.set(window.line.subarray(0, count));
  const values = new Float64Array(capacity * width);
  for (let c = 0; c < width; c++) {
    values.set(window.values.subarray(c * window.capacity, c * window.capacity + count), c * capacity);
  }
  Object.assign(window, { capacity, time, line, values });
}

/** Drops the first rows, which have been passed on. */
export function shift(window: RowWindow, rows: number): void {
  const { width, capacity, count, time, line, values } = window;
  if (rows > 0) window.lastLeft = time[rows - 1] as number;
  time.copyWithin(0, rows, count);
  line.copyWithin(0, rows, count);
  for (let c = 0; c < width; c++) {
    values.copyWithin(c * capacity, c * capacity + rows, c * capacity + count);
  }
  window.count = count - rows;
}
