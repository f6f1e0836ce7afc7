/*
 * The buckets of one beam: columns that grow, and at the end become the beam's trace where they stand. A bucket is
 * first written into the slot behind the last one, and counts once it has been accepted.
 */

/** Columns of buckets; the first rows of each are in use. */
export interface BucketColumns {
  /** Instant of the first reading [ms]. */
  time: Float64Array;
  /** Instant of the last reading [ms]. */
  until: Float64Array;
  /** Median, least and greatest of the readings. */
  middle: Float64Array;
  low: Float32Array;
  high: Float32Array;
  /** Standard deviation of the readings (divisor n). */
  spread: Float32Array;
  /** Number of readings. */
  count: Uint32Array;
}

/** Buckets that there is room for at first. */
const firstRoom = 1 << 12;
/** Times the room that it grows to: what is copied is touched twice, while room that is not used yet takes no memory. */
const growth = 4;

const columnsOf = (rows: number): BucketColumns => ({
  time: new Float64Array(rows),
  until: new Float64Array(rows),
  middle: new Float64Array(rows),
  low: new Float32Array(rows),
  high: new Float32Array(rows),
  spread: new Float32Array(rows),
  count: new Uint32Array(rows),
});

/** One beam's buckets, in order of time. */
export class BucketRows {
  columns: BucketColumns = columnsOf(firstRoom);
  length = 0;

  /** The slot for the next bucket. */
  slot(): number {
    this.makeRoom(this.length + 1);
    return this.length;
  }

  /** The bucket in the slot counts. */
  accept(): void {
    this.length++;
  }

  /** Grows to hold so many rows. */
  makeRoom(rows: number): void {
    const room = this.columns.time.length;
    if (rows <= room) return;
    const larger = columnsOf(Math.max(rows, growth * room));
    for (const key of keys) larger[key].set(this.columns[key].subarray(0, this.length));
    this.columns = larger;
  }

  /**
   * Joins neighbours that lie in the same stretch of time, before bucket `to`. Least, greatest and number of the joined
   * are exact; the median becomes the mean of the two, weighed by their numbers, so it is off by less than they are
   * apart; the spread takes the medians for means.
   *
   * @param width of a stretch [ms]
   * @param kept buckets that stay as they are, rising
   * @returns for each of `kept` its new number, and how many buckets fewer there are
   */
  join(to: number, width: number, kept: readonly number[]): { readonly kept: number[]; readonly fewer: number } {
    const { columns } = this;
    const { time } = columns;
    const moved: number[] = [];
    let next = 0;
    let into = 0;
    let joins = false;
    for (let bucket = 0; bucket < this.length; bucket++) {
      const stays = kept[next] === bucket;
      const free = !stays && bucket < to;
      const stretch = Math.floor((time[bucket] as number) / width);
      if (free && joins && Math.floor((time[into - 1] as number) / width) === stretch) {
        joinInto(columns, into - 1, bucket);
        joins = false;
        continue;
      }
      if (stays) {
        moved.push(into);
        next++;
      }
      for (const key of keys) columns[key][into] = columns[key][bucket] as number;
      into++;
      joins = free;
    }
    const fewer = this.length - into;
    this.length = into;
    return { kept: moved, fewer };
  }
}

const keys = ['time', 'until', 'middle', 'low', 'high', 'spread', 'count'] as const;

/** Makes one bucket of one and another behind it. */
function joinInto({ until, middle, low, high, spread, count }: BucketColumns, row: number, other: number): void {
  const n = count[row] as number;
  const m = count[other] as number;
  const joined = ((middle[row] as number) * n + (middle[other] as number) * m) / (n + m);
  const squares = (at: number) => (spread[at] as number) ** 2 + ((middle[at] as number) - joined) ** 2;
  spread[row] = Math.sqrt((n * squares(row) + m * squares(other)) / (n + m));
  middle[row] = joined;
  low[row] = Math.min(low[row] as number, low[other] as number);
  high[row] = Math.max(high[row] as number, high[other] as number);
  until[row] = until[other] as number;
  count[row] = n + m;
}
