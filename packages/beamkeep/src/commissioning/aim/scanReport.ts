import { aimLoss, type Estimate, fitLobe, fitLobeTwoAxes, type LobeFit, lobeLevel } from '../../optics/index.js';
import { type Beam, coveredShare, linearReading } from '../../site/index.js';
import { type AimMargin, aimMargin } from './aimMargin.js';
import type { AimScan } from './aimScan.js';
import { type AimWords, aimWords } from './aimWords.js';
import { estimated } from './estimated.js';
import { type Structure, type StructureMove, structureMoves } from './structureMoves.js';

/** What an aim scan says of a beam. */
export interface ScanReport {
  readonly fit: LobeFit;
  /** Where the head was left, one an axis [degrees]; undefined where nobody told. */
  readonly left: readonly number[] | undefined;
  /** Turn off the peak there, one an axis [degrees]; empty where nobody told. */
  readonly offset: readonly Estimate[];
  /** Loss there [dB]; undefined where nobody told. */
  readonly loss: Estimate | undefined;
  /** Share of the clean reading that stays when the beam is gone, and who says so. */
  readonly residue: { readonly share: number; readonly from: 'site file' | 'scan' };
  readonly alarm: AimMargin;
  readonly fault: AimMargin;
  readonly moves: readonly StructureMove[];
  readonly words: AimWords;
}

/** What is known beside the scan. */
export interface ScanQuestion {
  /** Where the head was left, one an axis [degrees]. */
  readonly left?: readonly number[] | undefined;
  /** What holds the head. */
  readonly structure?: Structure | undefined;
  /** Smallest step of the readings [unit of power]. */
  readonly step?: number | undefined;
}

/**
 * Fits the lobe of an aim scan, and says what margin the aim has.
 *
 * @param scan angles [degrees] and received power
 * @param beam of the site: thresholds, separation, covered reading
 * @param question where the head was left, what holds it
 * @throws UsageError for a scan of too few readings, and for as many angles as there are not axes
 */
export function scanReport(scan: AimScan, beam: Beam, { left, structure = {}, step }: ScanQuestion): ScanReport {
  const covered = beam.covered === undefined ? undefined : linearReading(beam.covered, beam.signalUnit);
  const options = { ...(covered !== undefined && { covered }), ...(step !== undefined && { quantum: step }) };
  const [first, second] = scan.angles as readonly [Float64Array, Float64Array | undefined];
  const fit = second ? fitLobeTwoAxes(first, second, scan.power, options) : fitLobe(first, scan.power, options);
  const loss = left && aimLoss(fit, left);
  const offset = (left ?? []).map((angle, k) => estimated(fit, ({ centre }) => angle - (centre[k] as number)));
  const residue = residueOf(fit, left, beam);
  const seen = beam.coveredSubtracted ? 0 : residue.share;
  const alarm = aimMargin(fit, left, beam.alarmThreshold, seen, beam);
  const moves = structureMoves(structure, beam.separation, alarm.degrees.value);
  return {
    fit,
    left,
    offset,
    loss,
    residue,
    alarm,
    fault: aimMargin(fit, left, beam.faultThreshold, seen, beam),
    moves,
    words: aimWords({
      axes: scan.axes,
      flags: fit.flags,
      loss,
      offset,
      halfAngle: fit.axes.map((axis) => axis.halfAngle),
      alarm,
      moves,
    }),
  };
}

/** What stays of the clean reading when the beam is gone: the covered reading, or else the floor of the scan. */
function residueOf({ lobe }: LobeFit, left: readonly number[] | undefined, beam: Beam): ScanReport['residue'] {
  if (beam.covered !== undefined) return { share: coveredShare(beam), from: 'site file' };
  const at = (left ?? lobe.centre).map((angle) => Float64Array.of(angle));
  const clean = lobeLevel(lobe, at)[0] as number;
  return { share: Math.min(Math.max(lobe.floor / clean, 0), 1), from: 'scan' };
}
