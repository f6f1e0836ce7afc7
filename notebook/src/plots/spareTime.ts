import { benchAtWork } from '../bench/openBench.js';

/** How long nothing new may have been asked for [ms]. */
const quiet = 1000;

let last: Promise<unknown> = Promise.resolve();

/** Safari does not say when it has nothing else to do. */
const idle = (): Promise<void> =>
  new Promise((resolve) => {
    if ('requestIdleCallback' in window) requestIdleCallback(() => resolve());
    else setTimeout(resolve, 100);
  });

/** How often it is seen whether a bench is still at work [ms]. */
const look = 250;

/** A bench at work leaves the page half of a small machine. */
async function benchAtRest(): Promise<void> {
  while (benchAtWork()) await new Promise((resolve) => setTimeout(resolve, look));
}

/**
 * Does what nobody waits for when neither the page nor a bench has anything else to do, one after the other.
 *
 * @returns gives it up
 */
export function inSpareTime(act: () => unknown): () => void {
  let wanted = true;
  setTimeout(() => {
    last = last
      .then(benchAtRest)
      .then(idle)
      .then(() => wanted && act());
  }, quiet);
  return () => {
    wanted = false;
  };
}
