import * as v from 'valibot';
import { type Truth, truthSchema } from '../../../../tests/evaluation/truth.js';
import type { Stretch } from '../../src/columns/index.js';
import { type CauseWord, causes, diagnoseBeams, type Severity } from '../../src/diagnosis/index.js';
import { type Beside, besides, nobody } from '../../src/diagnosis/weighing/beside.js';
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
  /** What the other beams of the log tell of it. */
  readonly beside: Beside;
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
  const beams = diagnoseBeams(records, site).map(({ id, from, to, picture }) => ({
    id,
    from,
    to,
    claimed: picture === undefined ? [] : causes.map((cause) => ({ cause, claims: cause.claims(picture) })),
    fires: picture?.fires ?? [],
  }));
  const beside = besides(beams);
  return {
    name,
    truth: v.parse(truthSchema, simulation.truth('', '')),
    beams: beams.map(({ id, claimed, fires }, own) => ({
      id,
      claims: claimed.flatMap(({ cause, claims }, row) =>
        claims.map(({ start, end, confidence, severity }, k) => ({
          cause: cause.word,
          start,
          end,
          raw: confidence,
          severity,
          beside: beside[own]?.[row]?.[k] ?? nobody,
        })),
      ),
      fires,
    })),
  };
}
