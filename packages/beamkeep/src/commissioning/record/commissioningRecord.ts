import type { Compensation, Layout, SignalUnit } from '../../site/index.js';
import type { AimJson } from '../answers/aimAnswer.js';
import type { CoveredJson } from '../answers/coveredAnswer.js';
import type { ProofJson } from '../answers/proofAnswer.js';
import type { BeamThresholdsJson } from '../answers/thresholdsAnswer.js';

/*
 * The commissioning record: one document that gathers what was measured, what was set, what was proved and what people
 * must write down. What is missing stands in it as missing; nothing is filled in.
 */

/** A note that somebody was told, with the time. */
export interface ToldOut {
  readonly who: string;
  readonly time: string;
}

/** Settings of a beam, as the site file has them. */
export interface SettingsOut {
  readonly layout: Layout;
  readonly separation: number;
  readonly height: number | null;
  readonly bearing: number | null;
  readonly tilt: number | null;
  readonly wavelength: number;
  readonly halfAngle: number | null;
  readonly signalUnit: SignalUnit;
  readonly cleanAir: number | null;
  readonly covered: number | null;
  readonly coveredSubtracted: boolean;
  readonly compensation: Compensation;
  readonly alarmThreshold: number;
  readonly alarmDelay: number;
  readonly faultThreshold: number;
  readonly faultDelay: number;
  readonly latching: boolean;
  readonly hysteresis: number;
  /** Defaults in use that bear on safety. */
  readonly assumed: readonly string[];
}

/** One beam of a record. */
export interface BeamOut {
  readonly id: string;
  readonly settings: SettingsOut;
  readonly thresholds: Omit<BeamThresholdsJson, 'table'>;
  readonly aim: AimJson | null;
  readonly covered: CoveredJson | null;
  readonly proof: ProofJson | null;
}

/** Something that a reader must know or do before the hand-over. */
export interface PointOut {
  /** The beam concerned; null: the whole site. */
  readonly beam: string | null;
  readonly words: string;
}

/** A finding that the received signal gave, and what a person found on site. */
export interface FindingOut {
  readonly beam: string;
  /** The word of the cause, as in `beamkeep-diagnosis/1`. */
  readonly cause: string;
  readonly severity: 'note' | 'watch' | 'act';
  readonly confidence: number;
  readonly start: string;
  readonly end: string;
  readonly summary: string;
  /** Null: nobody has looked yet. `cause` is what it was instead, where that is known. */
  readonly onSite: {
    readonly verdict: 'confirmed' | 'rejected' | 'relabelled';
    readonly cause: string | null;
    readonly note: string;
  } | null;
}

/** Where a number comes from. */
export interface BasisOut {
  readonly key: string;
  readonly says: string;
  readonly formula: string;
  readonly source: string;
  readonly seen: 'read' | 'from memory' | 'derived' | 'common practice' | 'own choice' | 'as given';
}

/** A commissioning record, ready for `JSON.stringify`. */
export interface CommissioningRecord {
  readonly format: 'beamkeep-record/1';
  /** When the document was made, ISO 8601. */
  readonly made: string;
  /** Day of the work, in the zone of the site; empty where nobody wrote it down. */
  readonly date: string;
  readonly site: {
    readonly name: string;
    readonly timeZone: string;
    readonly latitude: number | null;
    readonly longitude: number | null;
  };
  readonly people: readonly { readonly role: string; readonly name: string; readonly licence: string | null }[];
  readonly beams: readonly BeamOut[];
  readonly impairment: {
    readonly from: string;
    readonly until: string | null;
    readonly told: readonly ToldOut[];
    readonly fireWatch: { readonly by: string; readonly from: string; readonly until: string | null } | null;
    readonly returned: { readonly time: string; readonly by: string; readonly told: readonly ToldOut[] } | null;
  } | null;
  /** Period of the received signal that is kept with the record. */
  readonly log: {
    readonly from: string | null;
    readonly to: string | null;
    readonly lines: number;
    readonly dropped: number;
  } | null;
  /** Findings that people judged, and those that ask for someone to go; null where no diagnosis belongs to the record. */
  readonly findings: readonly FindingOut[] | null;
  readonly deviations: readonly string[];
  readonly notDone: readonly string[];
  readonly remarks: readonly string[];
  /** What failed or wants looking at. */
  readonly attention: readonly PointOut[];
  /** What a complete record would hold and this one does not. */
  readonly missing: readonly PointOut[];
  readonly cautions: readonly { readonly words: string; readonly source: string }[];
  readonly bases: readonly BasisOut[];
}
