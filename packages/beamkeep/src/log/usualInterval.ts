/** Differences that are looked at. */
const differencesLookedAt = 1 << 14;

/** Looks at the first times of a beam's usable samples to tell their usual interval. */
export class IntervalSeen {
  private readonly differences: number[] = [];
  private last = Number.NaN;

  /** Whether enough has been seen. */
  get full(): boolean {
    return this.differences.length >= differencesLookedAt;
  }

  see(time: Float64Array, readings: Float64Array, count: number): void {
    for (let row = 0; row < count && !this.full; row++) {
      if (Number.isNaN(readings[row] as number)) continue;
      const now = time[row] as number;
      if (!Number.isNaN(this.last)) this.differences.push(now - this.last);
      this.last = now;
    }
  }

  /** Median difference [s]; 0 of fewer than two samples. */
  seconds(): number {
    const sorted = Float64Array.from(this.differences).sort();
    const half = sorted.length >> 1;
    if (sorted.length === 0) return 0;
    const upper = sorted[half] as number;
    return (sorted.length & 1 ? upper : ((sorted[half - 1] as number) + upper) / 2) / 1000;
  }
}
