import type { Beam, Site } from '../../site/index.js';
import type { AimJson } from '../answers/aimAnswer.js';
import type { CoveredJson } from '../answers/coveredAnswer.js';
import type { ProofJson } from '../answers/proofAnswer.js';
import { beamThresholds } from '../answers/thresholdsAnswer.js';
import { everyCaution } from '../cautions.js';
import { basesOut } from './bases.js';
import type { BeamOut, CommissioningRecord, PointOut, SettingsOut } from './commissioningRecord.js';
import type { CommissioningDay } from './day.js';
import { pointsOf } from './pointsOf.js';

/** What was measured of one beam; what is left out was not done. */
export interface BeamAnswers {
  readonly aim?: AimJson | undefined;
  readonly covered?: CoveredJson | undefined;
  readonly proof?: ProofJson | undefined;
}

/** What is known beside the day file. */
export interface RecordPieces {
  /** Answers by the beam's id. */
  readonly answers: ReadonlyMap<string, BeamAnswers>;
  /** Tests that could not be used, and why. */
  readonly troubles: readonly PointOut[];
  /** The received signal kept with the record. */
  readonly log: CommissioningRecord['log'];
  /** What the log says, and what was found on site; none where it was not diagnosed. */
  readonly findings?: CommissioningRecord['findings'];
  /** When the record is made [ms since 1970-01-01 UTC]. */
  readonly made: number;
}

/**
 * Gathers a commissioning record. What is missing is listed, what failed is put forward.
 *
 * @param day what people wrote down
 * @param site settings of every beam
 * @param pieces what was measured
 */
export function recordOf(day: CommissioningDay, site: Site, pieces: RecordPieces): CommissioningRecord {
  const beams = site.beams.map((beam) => beamOut(beam, pieces.answers.get(beam.id) ?? {}));
  const { people = [], impairment, deviations = [], notDone = [], remarks = [] } = day;
  const record: Omit<CommissioningRecord, 'attention' | 'missing'> = {
    format: 'beamkeep-record/1',
    made: new Date(pieces.made).toISOString(),
    date: day.date,
    site: {
      name: site.name,
      timeZone: site.timeZone,
      latitude: site.latitude ?? null,
      longitude: site.longitude ?? null,
    },
    people: people.map(({ role, name, licence }) => ({ role, name, licence: licence ?? null })),
    beams,
    impairment: impairment
      ? {
          from: impairment.from,
          until: impairment.until ?? null,
          told: impairment.told ?? [],
          fireWatch: impairment.fireWatch
            ? { ...impairment.fireWatch, until: impairment.fireWatch.until ?? null }
            : null,
          returned: impairment.returned ? { ...impairment.returned, told: impairment.returned.told ?? [] } : null,
        }
      : null,
    log: pieces.log,
    findings: pieces.findings ?? null,
    deviations,
    notDone,
    remarks,
    cautions: everyCaution.map(({ words, source }) => ({ words, source })),
    bases: basesOut,
  };
  const { attention, missing } = pointsOf(record, pieces.troubles);
  const { cautions, bases, ...rest } = record;
  return { ...rest, attention, missing, cautions, bases };
}

function beamOut(beam: Beam, { aim, covered, proof }: BeamAnswers): BeamOut {
  const { table: _, ...thresholds } = beamThresholds(beam);
  return {
    id: beam.id,
    settings: settingsOut(beam),
    thresholds,
    aim: aim ?? null,
    covered: covered ?? null,
    proof: proof ?? null,
  };
}

const settingsOut = (beam: Beam): SettingsOut => ({
  layout: beam.layout,
  separation: beam.separation,
  height: beam.height ?? null,
  bearing: beam.bearing ?? null,
  tilt: beam.tilt ?? null,
  wavelength: beam.wavelength,
  halfAngle: beam.halfAngle ?? null,
  signalUnit: beam.signalUnit,
  cleanAir: beam.cleanAir ?? null,
  covered: beam.covered ?? null,
  coveredSubtracted: beam.coveredSubtracted,
  compensation: beam.compensation,
  alarmThreshold: beam.alarmThreshold,
  alarmDelay: beam.alarmDelay,
  faultThreshold: beam.faultThreshold,
  faultDelay: beam.faultDelay,
  latching: beam.latching,
  hysteresis: beam.hysteresis,
  assumed: beam.assumed,
});
