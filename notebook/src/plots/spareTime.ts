/** How long nothing new may have been asked for [ms]. */
const quiet = 1000;

let last: Promise<unknown> = Promise.resolve();

/** Safari does not say when it has nothing else to do. */
const idle = (): Promise<void> =>
  new Promise((resolve) => {
    if ('requestIdleCallback' in window) requestIdleCallback(() => resolve());
    else setTimeout(resolve, 100);
  });

/**
 * Does what nobody waits for when the page has nothing else to do, one after the other.
 *
 * @returns gives it up
 */
export function inSpareTime(act: () => unknown): () => void {
  let wanted = true;
  setTimeout(() => {
    last = last.then(idle).then(() => wanted && act());
  }, quiet);
  return () => {
    wanted = false;
  };
}
