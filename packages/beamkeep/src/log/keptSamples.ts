import type { Bucket } from './bucketRows.js';

/*
 * The samples of eventful buckets. There is room for so many; when it is full, the least eventful buckets give theirs
 * up, down to three quarters of the room, and what is less eventful than those is not let in any more.
 */

interface Segment {
  /** Bucket of its beam, counted from 0. */
  readonly bucket: number;
  readonly score: number;
  readonly time: Float64Array;
  readonly value: Float64Array;
}

/** Samples kept for all beams of a log. */
export class KeptSamples {
  private readonly beams: Map<number, Segment>[];
  private used = 0;
  private least = 0;

  constructor(
    width: number,
    private readonly room: number,
  ) {
    this.beams = Array.from({ length: width }, () => new Map());
  }

  /** Keeps the usable samples of rows `from` to `to` (excluded) of a beam's bucket. */
  keep(
    beam: number,
    bucket: number,
    score: number,
    time: Float64Array,
    values: Float64Array,
    from: number,
    to: number,
  ): void {
    if (score <= this.least) return;
    let count = 0;
    for (let row = from; row < to; row++) if (!Number.isNaN(values[row] as number)) count++;
    if (count > this.room) return;
    const segment = { bucket, score, time: new Float64Array(count), value: new Float64Array(count) };
    for (let row = from, at = 0; row < to; row++) {
      const value = values[row] as number;
      if (Number.isNaN(value)) continue;
      segment.time[at] = time[row] as number;
      segment.value[at++] = value;
    }
    this.beams[beam]?.set(bucket, segment);
    this.used += count;
    if (this.used > this.room) this.giveUp();
  }

  private giveUp(): void {
    const all = this.beams.flatMap((segments) => [...segments.values()]).sort((a, b) => b.score - a.score);
    let kept = 0;
    for (const { score, value } of all) {
      if (kept + value.length > 0.75 * this.room) {
        this.least = score;
        break;
      }
      kept += value.length;
    }
    this.used = 0;
    for (const segments of this.beams) {
      for (const [bucket, { score, value }] of segments) {
        if (score <= this.least) segments.delete(bucket);
        else this.used += value.length;
      }
    }
  }

  /** The samples kept of a bucket. */
  of(beam: number, bucket: number): { readonly time: Float64Array; readonly value: Float64Array } | undefined {
    return this.beams[beam]?.get(bucket);
  }

  /** Rows that a beam's kept samples take instead of one each bucket. */
  extraRows(beam: number): number {
    let extra = 0;
    for (const { value } of this.beams[beam]?.values() ?? []) extra += value.length - 1;
    return extra;
  }
}

/** What is needed of a bucket to tell whether something happened in it. */
export type Summary = Pick<Bucket, 'middle' | 'low' | 'high' | 'spread' | 'count'>;
