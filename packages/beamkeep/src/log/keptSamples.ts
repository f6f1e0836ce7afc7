/*
 * The samples of eventful buckets. There is room for so many; when it is full, the least eventful buckets give theirs
 * up, down to three quarters of the room, and what is no more eventful than those is not let in any more.
 */

/** A bucket whose samples are kept. */
export interface KeptBucket {
  readonly beam: number;
  /** Number among the buckets of its beam. */
  bucket: number;
  readonly score: number;
  /** Where its samples begin, and how many they are. */
  from: number;
  readonly count: number;
}

/** Share of the room that is left filled when it is cleared. */
const leftFilled = 0.75;

/** Samples kept for all beams of a log. */
export class KeptSamples {
  /** In order of time; those of one beam in order of their numbers. */
  buckets: KeptBucket[] = [];
  readonly time: Float64Array;
  readonly value: Float64Array;
  private used = 0;
  private least = 0;

  constructor(private readonly room: number) {
    this.time = new Float64Array(room);
    this.value = new Float64Array(room);
  }

  /**
   * Keeps the usable samples of a bucket, if it is eventful enough.
   *
   * @param rows of the times and values: `from` included, `to` not
   * @param count how many of the rows are usable
   */
  keep(
    { beam, bucket, score, count }: Omit<KeptBucket, 'from'>,
    time: Float64Array,
    values: Float64Array,
    rows: { readonly from: number; readonly to: number },
  ): void {
    if (score <= this.least || count > this.room * leftFilled) return;
    if (this.used + count > this.room) this.clear();
    if (score <= this.least) return;
    this.buckets.push({ beam, bucket, score, from: this.used, count });
    for (let row = rows.from; row < rows.to; row++) {
      const value = values[row] as number;
      if (Number.isNaN(value)) continue;
      this.time[this.used] = time[row] as number;
      this.value[this.used++] = value;
    }
  }

  private clear(): void {
    let left = 0;
    for (const { score, count } of [...this.buckets].sort((a, b) => b.score - a.score)) {
      left += count;
      if (left <= leftFilled * this.room) continue;
      this.least = score;
      break;
    }
    this.buckets = this.buckets.filter(({ score }) => score > this.least);
    this.used = 0;
    for (const kept of this.buckets) {
      this.time.copyWithin(this.used, kept.from, kept.from + kept.count);
      this.value.copyWithin(this.used, kept.from, kept.from + kept.count);
      kept.from = this.used;
      this.used += kept.count;
    }
  }
}
