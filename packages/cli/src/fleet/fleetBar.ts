import { type Options, Presets, SingleBar } from 'cli-progress';
import type { Output } from '../io.js';

/** Tells a person how far the fleet is. */
export interface FleetBar {
  start(logs: number, done: number): void;
  ready(): void;
  /** Writes something else without the bar in its way. */
  between(write: () => unknown): void;
  /** Leaves the line clean; more than once does no harm. */
  end(): void;
}

/** A bar on a terminal; elsewhere nothing. */
export function fleetBar(output: Output): FleetBar {
  if (output.isTTY !== true)
    return { start: () => undefined, ready: () => undefined, between: (write) => write(), end: () => undefined };
  const settings: Options = {
    format: 'diagnosing [{bar}] {value} of {total} logs, {eta_formatted} left',
    stream: output as NodeJS.WriteStream,
    clearOnComplete: true,
    // Its own handler would swallow an interrupt.
    gracefulExit: false,
    fps: 2,
  };
  const bar = new SingleBar(settings, Presets.legacy);
  return {
    start: (logs, done) => bar.start(logs, done),
    ready: () => bar.increment(),
    between(write) {
      output.write('\r\u001b[K'); // The line is cleared (ECMA-48, 8.3.41 EL); the bar draws itself again.
      write();
    },
    end: () => bar.stop(),
  };
}
