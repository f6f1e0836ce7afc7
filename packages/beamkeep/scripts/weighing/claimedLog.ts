import * as v from 'valibot';
import { type Truth, truthSchema } from '../../../../tests/evaluation/truth.js';
import type { Stretch } from '../../src/columns/index.js';
import { type CauseWord, causes, diagnoseBeams, type Severity } from '../../src/diagnosis/index.js';
import { logOfText, readTraces } from '../../src/log/index.js';
import { type ScenariosOptions, scenarioAt, simulate } from '../../src/simulation/index.js';
import { parseSite } from '../../src/site/index.js';

/** What a cause claims, before it is weighed. */
export interface RawClaim {
  readonly cause: CauseWord;
  /** First and last sample [ms]. */
  readonly start: number;
  readonly end: number;
  /** The plain score. */
  readonly raw: number;
  readonly severity: Severity;
}

/** A simulated log with its truth and with all that the causes claim of it. */
export interface ClaimedLog {
  readonly name: string;
  readonly truth: Truth;
  readonly beams: readonly {
    readonly id: string;
    readonly claims: readonly RawClaim[];
    /** When the loss called for fire. */
    readonly fires: readonly Stretch[];
  }[];
}

/** Simulates the k-th log of a seed in memory and lets every cause claim what it can of it. */
export async function claimedLog(seed: number, k: number, options: ScenariosOptions): Promise<ClaimedLog> {
  const drawn = scenarioAt(seed, k, options);
  const simulation = simulate(drawn.scenario, drawn.seed);
  const name = `${options.ranges} ${seed}/${k}`;
  const site = parseSite(simulation.site, name);
  const { records } = await readTraces(logOfText([...simulation.lines()].join(''), name), site);
  return {
    name,
    truth: v.parse(truthSchema, simulation.truth('', '')),
    beams: diagnoseBeams(records, site).map(({ id, picture }) => ({
      id,
      claims: picture === undefined ? [] : causes.flatMap((cause) => rawClaims(cause.word, cause.claims(picture))),
      fires: picture?.fires ?? [],
    })),
  };
}

const rawClaims = (
  cause: CauseWord,
  claims: readonly { start: number; end: number; confidence: number; severity: Severity }[],
): RawClaim[] =>
  claims.map(({ start, end, confidence, severity }) => ({ cause, start, end, raw: confidence, severity }));
