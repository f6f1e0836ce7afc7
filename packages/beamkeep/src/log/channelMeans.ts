import type { Channel } from '../columns/index.js';

/** Gathers a column logged beside the beams into means of one bucket each. */
export class ChannelMeans {
  private readonly times: number[] = [];
  private readonly values: number[] = [];
  private end = Number.NEGATIVE_INFINITY;
  private first = 0;
  private span = 0;
  private sum = 0;
  private count = 0;

  constructor(private readonly bucketWidth: number) {}

  add(time: Float64Array, values: Float64Array, count: number): void {
    for (let row = 0; row < count; row++) {
      const value = values[row] as number;
      if (Number.isNaN(value)) continue;
      const now = time[row] as number;
      if (now >= this.end) {
        this.close();
        this.end = (Math.floor(now / this.bucketWidth) + 1) * this.bucketWidth;
        this.first = now;
      }
      this.span += now - this.first;
      this.sum += value;
      this.count++;
    }
  }

  private close(): void {
    if (this.count === 0) return;
    this.times.push(this.first + this.span / this.count);
    this.values.push(this.sum / this.count);
    this.span = 0;
    this.sum = 0;
    this.count = 0;
  }

  /** One row a bucket, at the mean time of its readings. */
  channel(): Channel {
    this.close();
    return { time: Float64Array.from(this.times), value: Float64Array.from(this.values) };
  }
}
