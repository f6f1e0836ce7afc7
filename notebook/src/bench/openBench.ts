import { type Endpoint, type Remote, wrap } from 'comlink';
import type { Bench } from './bench.js';

/** A bench at work, and how to end it. */
export interface OpenBench {
  readonly bench: Remote<Bench>;
  /**
   * The same worker for the next log, its code warm from this one; undefined while it is still busy. Nothing can be asked
   * of this bench from then on.
   */
  next(): OpenBench | undefined;
  /** Ends the worker at once, whatever it is doing. What was asked of it is never answered. */
  close(): void;
}

/** Questions to any bench that are not answered yet. */
let asked = 0;

/** Whether a bench is at work. */
export const benchAtWork = (): boolean => asked > 0;

/** Starts a worker for one log. */
export const openBench = (): OpenBench =>
  benchOf(new Worker(new URL('./bench.ts', import.meta.url), { type: 'module', name: 'beamkeep bench' }));

function benchOf(worker: Worker): OpenBench {
  let unanswered = 0;
  const given = new AbortController();
  const { signal } = given;
  const count = (questions: number): void => {
    unanswered += questions;
    asked += questions;
  };
  worker.addEventListener('message', () => count(-1), { signal });
  const endpoint: Endpoint = {
    addEventListener: (type, listener) => worker.addEventListener(type, listener, { signal }),
    removeEventListener: (type, listener) => worker.removeEventListener(type, listener),
    postMessage(message, transfer) {
      if (signal.aborted) return;
      count(1);
      worker.postMessage(message, transfer ?? []);
    },
  };
  return {
    bench: wrap<Bench>(endpoint),
    next() {
      if (unanswered > 0) return undefined;
      given.abort();
      return benchOf(worker);
    },
    close() {
      given.abort();
      count(-unanswered);
      worker.terminate();
    },
  };
}
