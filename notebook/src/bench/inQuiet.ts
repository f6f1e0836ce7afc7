/*
 * A worker answers in the order in which it is asked. The lines, at which a person looks first, take milliseconds, but
 * would stand in the queue behind questions that take seconds: those begin once nothing has been asked for a moment.
 */

/** How long a moment is [ms]: longer than a page needs between two questions while it fills its cells. */
const moment = 100;

let lastAsked = Number.NEGATIVE_INFINITY;
let last: Promise<unknown> = Promise.resolve();

/** Says that something quick was asked. */
export function quick(): void {
  lastAsked = performance.now();
}

/** Does slow work when it is quiet, one after the other. */
export function inQuiet<T>(work: () => T | Promise<T>): Promise<T> {
  lastAsked = performance.now();
  const turn = last.then(silence).then(work);
  last = turn.catch(() => undefined);
  return turn;
}

/** What was asked while slow work went on is answered during the wait, and makes it longer. */
async function silence(): Promise<void> {
  let wait = 0;
  do {
    await new Promise((resolve) => setTimeout(resolve, wait));
    wait = lastAsked + moment - performance.now();
  } while (wait > 0);
}
