import type { FindingJson, ForecastJson } from 'beamkeep';
import type { CauseWord, Severity } from 'beamkeep/diagnosis';
import { ordered } from '../say/ordered.js';
import type { FleetLine } from './fleetLine.js';

/** What a beam of the fleet asks for: the row of the table by which visits are planned. */
export interface Visit {
  readonly log: string;
  readonly beam: string;
  /** The most pressing duty of the beam; null where nothing was found. */
  readonly severity: Severity | null;
  /** What it is for, with its time. */
  readonly cause: CauseWord | null;
  readonly start: string | null;
  readonly ongoing: boolean;
  readonly forecast: ForecastJson | null;
}

/** What a fleet comes to, in the order in which a person should go. */
export interface Visits {
  readonly format: 'beamkeep-visits/1';
  readonly logs: number;
  readonly beams: readonly Visit[];
  /** Logs that gave no diagnosis: nobody watches their beams. */
  readonly unusable: readonly { readonly log: string; readonly error: string }[];
}

const duty = { act: 0, watch: 1, note: 2 } as const;

const byCodes = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Most pressing duty first, then the earliest forecast; names last, so that the order is always the same. */
export const sooner = (a: Visit, b: Visit): number =>
  (a.severity === null ? 3 : duty[a.severity]) - (b.severity === null ? 3 : duty[b.severity]) ||
  byCodes(a.forecast?.median ?? '~', b.forecast?.median ?? '~') ||
  byCodes(a.log, b.log) ||
  byCodes(a.beam, b.beam);

/** A whole line comes down to this much: a fleet of ten thousand beams fits in memory many times over. */
export const visitsOf = ({ log, diagnosis }: FleetLine): Visit[] =>
  (diagnosis?.beams ?? []).map(({ id, findings, forecast }) => {
    const [first]: readonly (FindingJson | undefined)[] = ordered(findings);
    return {
      log,
      beam: id,
      severity: first?.severity ?? null,
      cause: first?.cause ?? null,
      start: first?.start ?? null,
      ongoing: first?.ongoing ?? false,
      forecast,
    };
  });
