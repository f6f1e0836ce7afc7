import { UsageError } from '../columns/index.js';
import { plainRecording } from './recording/recording.js';
import { drawScenario } from './scenarios/drawScenario.js';
import { daysNeeded, type Happening, happenings } from './scenarios/happening.js';
import { weighing } from './scenarios/ranges.js';
import { simulate } from './simulate.js';
import type { TruthFile } from './truth/truthFile.js';

/** What to simulate. */
export interface SimulateLogOptions {
  /** Whole number; the same options give the same bytes. */
  readonly seed: number;
  /** Length of the log [d]. */
  readonly days: number;
  /** [s] */
  readonly intervalSeconds: number;
  /** How many beams, 1 to 16. */
  readonly beams: number;
  /** Causes, dealt out over the beams in turn; none for a healthy site. `cleaned` brings dirt that is cleaned off. */
  readonly causes: readonly string[];
}

/** A simulated log, to be written as it comes. */
export interface SimulatedLog {
  /** Lines of the log, header first, each with its line end. */
  readonly lines: Iterable<string>;
  /** The site file, to be written as JSON. */
  readonly site: Record<string, unknown>;
  /** The truth file, to be written as JSON; the arguments name the files it speaks of. */
  truth(log: string, site: string): TruthFile;
}

/** Most readings of one simulated log: beams times samples. */
const most = 8_000_000;

/**
 * A log by a plain logger, with the causes asked for.
 *
 * @throws UsageError for an unknown cause, a number out of range, or a log of more than eight million readings
 * @example simulateLog({ seed: 7, days: 30, intervalSeconds: 60, beams: 2, causes: ['contamination'] })
 */
export function simulateLog({ seed, days, intervalSeconds, beams, causes }: SimulateLogOptions): SimulatedLog {
  const check = (name: string, value: number, low: number, high: number) => {
    if (!(value >= low && value <= high))
      throw new UsageError(`simulate: ${name} is ${value}: must be ${low} to ${high}`);
  };
  check('seed', seed, -(2 ** 31), 2 ** 31 - 1);
  check('days', days, 0.001, 3660);
  check('intervalSeconds', intervalSeconds, 0.001, 86_400);
  check('beams', beams, 1, 16);
  if (!Number.isInteger(seed) || !Number.isInteger(beams))
    throw new UsageError('simulate: seed and beams must be whole numbers');
  const samples = Math.floor((days * 86_400) / intervalSeconds);
  if (samples < 2)
    throw new UsageError(
      `simulate: ${days} days at ${intervalSeconds} s hold no two samples: make the log longer or the interval shorter`,
    );
  if (samples * beams > most) {
    throw new UsageError(
      `simulate: ${samples} samples of ${beams} beams are ${samples * beams} readings, more than ${most}: fewer days, fewer beams or a longer interval`,
    );
  }
  const plan: Happening[][] = Array.from({ length: beams }, () => []);
  for (const [k, word] of causes.entries()) {
    const cause = word === 'cleaned' ? 'contamination' : happenings.find((one) => one === word);
    if (!cause)
      throw new UsageError(`simulate: "${word}" is not a cause: use ${[...happenings, 'cleaned'].join(', ')}`);
    if (days < daysNeeded[cause]) {
      throw new UsageError(`simulate: ${word} needs ${daysNeeded[cause]} days to show, the log has ${days}`);
    }
    plan[k % beams]?.push(cause);
  }
  const kind = causes.length === 0 ? 'healthy' : causes.length === 1 ? 'single' : 'mixed';
  const drawn = drawScenario(weighing, seed, {
    kind,
    happenings: plan,
    timing: { intervalSeconds, samples },
    beams,
    budget: samples,
  });
  const simulation = simulate(
    {
      ...drawn,
      recording: { ...plainRecording, tick: intervalSeconds < 1 || intervalSeconds % 1 !== 0 ? 1 : 1000 },
      untold: [],
      beams: drawn.beams.map((beam) => ({ ...beam, untold: ['latching'] })),
    },
    seed,
  );
  return { lines: { [Symbol.iterator]: () => simulation.lines() }, site: simulation.site, truth: simulation.truth };
}
