import type { Progress } from './reading.js';

/** How often the page is told of progress, at most [ms]. */
const tellEvery = 100;

/** Tells how many bytes of `total` are done, but not too often. */
export function teller(total: number, tell: (progress: Progress) => void): (done: number) => void {
  let told = Number.NEGATIVE_INFINITY;
  return (done) => {
    const now = performance.now();
    if (now - told < tellEvery && done < total) return;
    told = now;
    tell({ done, total });
  };
}
