import { type Remote, wrap } from 'comlink';
import type { Bench } from './bench.js';

/** A bench at work, and how to end it. */
export interface OpenBench {
  readonly bench: Remote<Bench>;
  /** Ends the worker at once, whatever it is doing. What was asked of it is never answered. */
  close(): void;
}

/** Starts a worker for one log. */
export function openBench(): OpenBench {
  const worker = new Worker(new URL('./bench.ts', import.meta.url), { type: 'module', name: 'beamkeep bench' });
  return { bench: wrap<Bench>(worker), close: () => worker.terminate() };
}
