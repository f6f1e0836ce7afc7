import { type ComparedBeam, compare } from '../../../../tests/evaluation/compare.js';
import type { StatedFinding } from '../../../../tests/evaluation/diagnosisJson.js';
import { type CauseWord, causeWords } from '../../src/diagnosis/index.js';
import { said } from '../../src/diagnosis/weighing/said.js';
import type { Weighing } from '../../src/diagnosis/weighing/weighing.js';
import type { ClaimedLog, RawClaim } from './claimedLog.js';

/** What is said of a simulated log under a weighing, held against its truth by the comparison of the evaluation. */
export function judged({ name, truth, beams }: ClaimedLog, weighing: Weighing): ComparedBeam[] {
  const fires = new Map(beams.map((beam) => [beam.id, beam.fires.map(({ start, end }) => ({ from: start, to: end }))]));
  const diagnosis = {
    beams: beams.map(({ id, claims }) => ({
      id,
      findings: claims.flatMap((claim) => stated(claim, alike(claims, claim.cause), weighing)),
      forecast: null,
    })),
  };
  return compare(name, truth, diagnosis, fires, causeWords);
}

/** How many of the claims are of a cause. */
export const alike = (claims: readonly RawClaim[], cause: CauseWord): number =>
  claims.reduce((sum, claim) => sum + (claim.cause === cause ? 1 : 0), 0);

function stated(
  { cause, start, end, raw, severity, beside }: RawClaim,
  many: number,
  weighing: Weighing,
): StatedFinding[] {
  const words = said(cause, { confidence: raw, severity }, many, weighing, beside);
  if (words === undefined) return [];
  return [{ cause, start: new Date(start).toISOString(), end: new Date(end).toISOString(), ...words }];
}
