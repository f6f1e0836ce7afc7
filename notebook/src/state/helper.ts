import type { Remote } from 'comlink';
import type { Bench } from '../bench/bench.js';
import { type OpenBench, openBench } from '../bench/openBench.js';

let open: OpenBench | undefined;

/** A worker for questions that need no log; it is started by the first one. */
export function helper(): Remote<Bench> {
  open ??= openBench();
  return open.bench;
}
