import type { BeamRecord } from '../columns/index.js';
import { respondToTrace } from '../response/index.js';
import type { Beam, Site, Visit } from '../site/index.js';
import type { Claim } from './cause.js';
import { causes } from './causes/index.js';
import type { Finding } from './finding.js';
import type { Picture } from './picture.js';
import { pictureOf } from './pictureOf.js';
import { view } from './view.js';
import { said } from './weighing/said.js';
import { calibrated } from './weighing/weighing.js';

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
  return records.map((record) => {
    const beam = site.beams.find((b) => b.id === record.id);
    if (beam === undefined) throw new RangeError(`record "${record.id}" is of no beam of the site`);
    return diagnoseBeam(record, beam, site);
  });
}

function diagnoseBeam(record: BeamRecord, beam: Beam, site: Site): BeamDiagnosis {
  const seen = view(record, beam, site);
  if (seen === undefined) {
    return { id: beam.id, from: Number.NaN, to: Number.NaN, samples: 0, findings: [], picture: undefined };
  }
  const visits = site.visits.filter((v) => v.beam === undefined || v.beam === beam.id);
  const { fires } = respondToTrace(
    record.trace,
    record.cleanAir === undefined ? beam : { ...beam, cleanAir: record.cleanAir },
    visits,
    record.intervalSeconds,
    site.sampling,
  );
  const whole = pictureOf(seen, fires);
  const findings = causes.flatMap((cause) =>
    cause.claims(whole).flatMap((claim, _, { length: alike }) => {
      const weighed = said(cause.word, claim, alike, calibrated);
      return weighed === undefined ? [] : [worded({ ...claim, ...weighed }, cause, seen.to, visits)];
    }),
  );
  const samples = record.logged ?? total(record.trace.count);
  return {
    id: beam.id,
    from: seen.from,
    to: seen.to,
    samples,
    findings: findings.sort((a, b) => a.start - b.start || a.end - b.end || a.cause.localeCompare(b.cause)),
    picture: whole,
  };
}

function total(counts: Uint32Array): number {
  let sum = 0;
  for (let i = 0; i < counts.length; i++) sum += counts[i] as number;
  return sum;
}

function worded(claim: Claim, cause: (typeof causes)[number], last: number, visits: readonly Visit[]): Finding {
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
