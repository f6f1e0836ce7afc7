import type { BeamRecord } from '../columns/index.js';
import { respondToTrace } from '../response/index.js';
import type { Beam, Site, Visit } from '../site/index.js';
import type { Cause, Claim } from './cause.js';
import { causes } from './causes/index.js';
import type { Finding } from './finding.js';
import type { Picture } from './picture.js';
import { pictureOf } from './pictureOf.js';
import { view } from './view.js';
import { besides, nobody } from './weighing/beside.js';
import { said } from './weighing/said.js';
import { calibrated } from './weighing/weighing.js';
import { evidence } from './wording.js';

/** What was found on one beam. */
export interface BeamDiagnosis {
  readonly id: string;
  /** First and last sample [ms]; NaN where there is none. */
  readonly from: number;
  readonly to: number;
  /** Usable samples. */
  readonly samples: number;
  readonly findings: readonly Finding[];
  /** What was measured on the way, for the forecast and for whoever wants to look; undefined without a sample. */
  readonly picture: Picture | undefined;
}

/**
 * Explains the records of a site's beams.
 *
 * @param records one a beam, in the order of the site file
 * @param site the site
 * @returns one diagnosis a record, findings in order of their start; pure: the same records give the same answer
 */
export function diagnoseBeams(records: readonly BeamRecord[], site: Site): BeamDiagnosis[] {
  const beams = records.map((record) => {
    const beam = site.beams.find((b) => b.id === record.id);
    if (beam === undefined) throw new RangeError(`record "${record.id}" is of no beam of the site`);
    return measured(record, beam, site);
  });
  const beside = besides(beams);
  return beams.map(({ picture, claimed, visits, ...beam }, own) => {
    const findings = claimed.flatMap(({ cause, claims }, row) =>
      claims.flatMap((claim, k): Finding[] => {
        const others = beside[own]?.[row]?.[k] ?? nobody;
        const weighed = said(cause.word, claim, claims.length, calibrated, others);
        if (weighed === undefined) return [];
        const told =
          others === nobody
            ? []
            : [evidence('how clearly another beam shows the same then, 0 to 1', 1 - others.alone, '')];
        return [worded({ ...claim, ...weighed, evidence: [...claim.evidence, ...told] }, cause, beam.to, visits)];
      }),
    );
    return {
      ...beam,
      findings: findings.sort((a, b) => a.start - b.start || a.end - b.end || a.cause.localeCompare(b.cause)),
      picture,
    };
  });
}

/** A beam with all that the causes claim of it, before it is weighed. */
interface Measured extends Omit<BeamDiagnosis, 'findings'> {
  readonly claimed: readonly { readonly cause: Cause; readonly claims: readonly Claim[] }[];
  readonly visits: readonly Visit[];
}

function measured(record: BeamRecord, beam: Beam, site: Site): Measured {
  const seen = view(record, beam, site);
  if (seen === undefined) {
    return { id: beam.id, from: Number.NaN, to: Number.NaN, samples: 0, claimed: [], visits: [], picture: undefined };
  }
  const visits = site.visits.filter((v) => v.beam === undefined || v.beam === beam.id);
  const { fires } = respondToTrace(
    record.trace,
    record.cleanAir === undefined ? beam : { ...beam, cleanAir: record.cleanAir },
    visits,
    record.intervalSeconds,
    site.sampling,
  );
  const picture = pictureOf(seen, fires);
  return {
    id: beam.id,
    from: seen.from,
    to: seen.to,
    samples: record.logged ?? total(record.trace.count),
    claimed: causes.map((cause) => ({ cause, claims: cause.claims(picture) })),
    visits,
    picture,
  };
}

function total(counts: Uint32Array): number {
  let sum = 0;
  for (let i = 0; i < counts.length; i++) sum += counts[i] as number;
  return sum;
}

function worded(claim: Claim, cause: Cause, last: number, visits: readonly Visit[]): Finding {
  const { start, end, episodes, confidence, severity, summary, evidence } = claim;
  const during = visits.find((v) => v.time <= start && (v.until ?? v.time) >= end && (v.until ?? v.time) > v.time);
  return {
    cause: cause.word,
    start,
    end,
    ongoing: end >= last && cause.word !== 'cleaned',
    confidence,
    severity,
    summary,
    evidence,
    action: claim.action ?? cause.action,
    settles: claim.settles ?? cause.settles,
    ...(episodes === undefined ? {} : { episodes }),
    ...(during === undefined ? {} : { during: during.work }),
  };
}
