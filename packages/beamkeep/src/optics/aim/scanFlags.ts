import type { RobustNonlinearFit } from '../../statistics/index.js';
import { type Angles, type Lobe, offPeak } from './lobeModel.js';
import type { StrayLobe } from './strayLobe.js';

/*
 * What an aim scan shows beside one clean lobe. Each flag is a reason to look again before the head is locked:
 *
 *     second-peak       the level rises again away from the peak: a stray reflection, or the wrong target
 *     shoulder          a flank that stands too high without a peak of its own: a reflection that overlaps
 *     raised-floor      far off the peak more comes back than the covered reading: light that is not the beam's
 *     clipped           the top is cut off: the receiver is saturated, the true peak lies above
 *     few-points        too few readings to tell a lobe from anything else
 *     peak-not-crossed  the level does not fall on both sides: the peak may lie outside the scan
 *     noisy             the readings scatter so much that the centre is in doubt
 */

/** What was seen. */
export type ScanFlagKind =
  | 'second-peak'
  | 'shoulder'
  | 'raised-floor'
  | 'clipped'
  | 'few-points'
  | 'peak-not-crossed'
  | 'noisy';

/** One doubt about a scan. */
export interface ScanFlag {
  readonly kind: ScanFlagKind;
  /** Where, one an axis [unit of the angles]; left out where it concerns the whole scan. */
  readonly at?: readonly number[];
  /** How much: level above the lobe or the covered reading over the peak; readings; spread over the peak. */
  readonly size: number;
}

/** Readings from which a lobe can be told, beyond one for each number that is fitted. */
const spareReadings = 4;
/** Turn off the peak by which each side must have been followed: there a Gaussian has lost 0.75 dB [half-angles]. */
const followed = 0.5;
/** Turn off the peak from which an excess is no fault of the lobe's own shape [half-angles]. */
const outside = 0.7;
/** Excess that matters, over the peak; and over the spread of the readings, in one reading and in two together. */
const excessShare = 0.02;
const loneExcess = 8;
const pairedExcess = 3.5;
/** Two readings nearer than this belong together [half-angles]. */
const together = 0.6;
/** Floor above the covered reading that matters, over the peak. */
const floorShare = 0.03;
/** Spread of the readings over the peak, or error of the centre in half-angles, from which a scan is noisy. */
const noisyShare = 0.1;

/** What flags are drawn from. */
export interface ScanEvidence {
  readonly lobe: Lobe;
  readonly fit: RobustNonlinearFit;
  readonly angles: Angles;
  readonly level: Float64Array;
  /** Level at which the top is cut off [unit of the levels]; no row stands at it. */
  readonly cut: number | undefined;
  /** Level with the far end covered [unit of the levels]. */
  readonly covered: number;
  /** Standard error of each centre [half-angles], and of the floor [unit of the levels]. */
  readonly centreError: readonly number[];
  readonly floorError: number;
  /** A weaker lobe that was fitted beside the main one. */
  readonly stray: StrayLobe | undefined;
}

/** Every doubt about a scan, the gravest kinds first. */
export function scanFlags(evidence: ScanEvidence): ScanFlag[] {
  return [
    ...fewPoints(evidence),
    ...notCrossed(evidence),
    ...clippedTop(evidence),
    ...strayLight(evidence),
    ...raisedFloor(evidence),
    ...noisy(evidence),
  ];
}

function fewPoints({ lobe, fit, angles }: ScanEvidence): ScanFlag[] {
  const off = offPeak(lobe, angles);
  const onLobe = off.filter((turn) => turn < 1.5).length;
  const enough = fit.n >= fit.parameters.length + spareReadings && onLobe >= fit.parameters.length;
  return enough ? [] : [{ kind: 'few-points', size: fit.n }];
}

function notCrossed({ lobe, angles }: ScanEvidence): ScanFlag[] {
  const open = angles.some((column, k) => {
    const turns = column.map((angle) => (angle - (lobe.centre[k] as number)) / (lobe.halfAngle[k] as number));
    return !(turns.some((turn) => turn <= -followed) && turns.some((turn) => turn >= followed));
  });
  return open ? [{ kind: 'peak-not-crossed', at: lobe.centre, size: 1 }] : [];
}

const clippedTop = ({ lobe, cut }: ScanEvidence): ScanFlag[] =>
  cut === undefined ? [] : [{ kind: 'clipped', at: lobe.centre, size: (lobe.floor + lobe.peak - cut) / lobe.peak }];

function raisedFloor({ lobe, covered, floorError }: ScanEvidence): ScanFlag[] {
  const above = lobe.floor - covered;
  const sure = above > 3 * floorError && above > floorShare * lobe.peak;
  return sure ? [{ kind: 'raised-floor', size: above / lobe.peak }] : [];
}

function noisy({ lobe, fit, centreError }: ScanEvidence): ScanFlag[] {
  const scatters = fit.residualSpread > noisyShare * lobe.peak; // a dip is no peak, whatever it is worth
  const inDoubt = scatters || centreError.some((error) => !(error <= noisyShare));
  return inDoubt ? [{ kind: 'noisy', size: fit.residualSpread / lobe.peak }] : [];
}

/** Second peaks and shoulders: the lobe that was fitted, and rows that stand above all lobes; at most three places. */
function strayLight({ lobe, fit, angles, level, stray }: ScanEvidence): ScanFlag[] {
  const turns = angles.map((column, k) =>
    column.map((angle) => (angle - (lobe.centre[k] as number)) / (lobe.halfAngle[k] as number)),
  );
  const off = offPeak(lobe, angles);
  const apart = (a: number, b: number) => Math.hypot(...turns.map((turn) => (turn[a] as number) - (turn[b] as number)));
  const excess = (row: number) => fit.residuals[row] as number;
  const high = (row: number, spreads: number) =>
    excess(row) > Math.max(spreads * fit.residualSpread, excessShare * lobe.peak) && (off[row] as number) > outside;
  const rows = Array.from(level.keys()).filter((row) => high(row, pairedExcess));
  const flags: ScanFlag[] = [];
  const places: number[] = [];
  if (stray) flags.push({ kind: stray.ownPeak ? 'second-peak' : 'shoulder', at: stray.at, size: stray.share });
  for (const row of [...rows].sort((a, b) => excess(b) - excess(a))) {
    const alone = !rows.some((other) => other !== row && apart(row, other) < together);
    if (flags.length === 3 || places.some((place) => apart(place, row) < 1) || (alone && !high(row, loneExcess)))
      continue;
    places.push(row);
    const margin = Math.max(3 * fit.residualSpread, excessShare * lobe.peak) / 2;
    flags.push({
      kind: valleyBefore(row, turns, level, margin) ? 'second-peak' : 'shoulder',
      at: angles.map((column) => column[row] as number),
      size: excess(row) / lobe.peak,
    });
  }
  return flags;
}

/** Whether on the way from the peak to a row the level was lower than it is there. */
function valleyBefore(row: number, turns: readonly Float64Array[], level: Float64Array, margin: number): boolean {
  const end = turns.map((turn) => turn[row] as number);
  const length = Math.hypot(...end);
  return level.some((value, i) => {
    const point = turns.map((turn) => turn[i] as number);
    const along = point.reduce((sum, turn, k) => sum + turn * (end[k] as number), 0) / length;
    const across = Math.sqrt(Math.max(point.reduce((sum, turn) => sum + turn * turn, 0) - along * along, 0));
    return along > 0 && along < length && across < 0.35 && value < (level[row] as number) - margin;
  });
}
