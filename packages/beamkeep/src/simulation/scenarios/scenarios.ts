import { random } from '../random.js';
import type { Scenario } from '../scenario.js';
import { drawScenario } from './drawScenario.js';
import { type RangeSet, rangeSets } from './ranges.js';

/** What a set of random scenarios is drawn from. */
export interface ScenariosOptions {
  /** Kinds of log, each with its weight; left out: mostly single causes. */
  readonly kinds?: readonly (readonly [Scenario['kind'], number])[];
  readonly ranges: RangeSet;
  /** Most samples of a log with one beam; 60 000 when left out. */
  readonly budget?: number;
}

/** Kinds of log in a corpus, as often as they are wanted. */
const usualKinds: readonly (readonly [Scenario['kind'], number])[] = [
  ['single', 11],
  ['mixed', 5],
  ['healthy', 3],
  ['truncated', 2],
];

/** A scenario and the seed to simulate it with. */
export interface Seeded {
  readonly scenario: Scenario;
  readonly seed: number;
}

/**
 * Random scenarios without end, each with its seed; the same seed and options give the same ones.
 *
 * @param seed whole number
 * @param options kinds and ranges
 * @example for (const { scenario, seed } of scenarios(1, { ranges: 'weighing' })) simulate(scenario, seed)
 */
export function* scenarios(seed: number, options: ScenariosOptions): Generator<Seeded> {
  for (let k = 0; ; k++) yield scenarioAt(seed, k, options);
}

/** The k-th of the random scenarios of a seed, without drawing those before it. */
export function scenarioAt(seed: number, k: number, options: ScenariosOptions): Seeded {
  const draw = random(seed, options.ranges, 'log', k);
  const own = draw.integer(0, 2 ** 31 - 1);
  const kind = draw.weighted(options.kinds ?? usualKinds);
  return {
    scenario: drawScenario(rangeSets[options.ranges], own, { kind, budget: options.budget ?? 60_000 }),
    seed: own,
  };
}
