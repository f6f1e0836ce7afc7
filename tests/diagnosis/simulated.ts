import type { BeamRecord } from '../../packages/beamkeep/src/columns/index.js';
import { type BeamDiagnosis, diagnoseBeams, type Finding } from '../../packages/beamkeep/src/diagnosis/index.js';
import { type InputReport, logOfText, readTraces } from '../../packages/beamkeep/src/log/index.js';
import { type Scenario, type Simulation, simulate } from '../../packages/beamkeep/src/simulation/index.js';
import { parseSite, type Site } from '../../packages/beamkeep/src/site/index.js';

/** A simulated log, read back and diagnosed. */
export interface Explained {
  readonly simulation: Simulation;
  readonly text: string;
  readonly site: Site;
  readonly records: readonly BeamRecord[];
  readonly input: InputReport;
  readonly diagnoses: readonly BeamDiagnosis[];
}

/** Simulates a log, writes it, reads it back and diagnoses it. */
export async function explained(scenario: Scenario, seed: number): Promise<Explained> {
  const simulation = simulate(scenario, seed);
  const text = [...simulation.lines()].join('');
  const site = parseSite(simulation.site);
  const { records, input } = await readTraces(logOfText(text), site);
  return { simulation, text, site, records, input, diagnoses: diagnoseBeams(records, site) };
}

/** Whether a stretch has a sample in common with a finding of smoke. */
export const tellsSmoke = (findings: readonly Finding[], start: number, end: number): boolean =>
  findings.some((f) => f.cause === 'smoke-like' && f.start <= end && f.end >= start);

/** Labelled smoke of a simulation over which no smoke is told; as beam and begin. */
export const smokeLost = ({ simulation, diagnoses }: Explained): string[] =>
  simulation.beams.flatMap(({ id, truth }) =>
    truth.causes
      .filter(({ cause }) => cause === 'smoke-like')
      .filter(
        ({ start, end }) =>
          !tellsSmoke(diagnoses.find((d) => d.id === id)?.findings ?? [], Date.parse(start), Date.parse(end)),
      )
      .map(({ start }) => `${id} ${start}`),
  );

/** Smoke that the simulation labels. */
export const smokeLabelled = ({ simulation }: Explained): number =>
  simulation.beams.reduce((n, { truth }) => n + truth.causes.filter(({ cause }) => cause === 'smoke-like').length, 0);
