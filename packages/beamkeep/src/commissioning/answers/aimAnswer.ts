import type { Estimate, LobeFit, ScanFlag, StrayLobe } from '../../optics/index.js';
import type { AimMargin } from '../aim/aimMargin.js';
import type { AimScan } from '../aim/aimScan.js';
import { flagWords } from '../aim/aimWords.js';
import type { ScanReport } from '../aim/scanReport.js';
import type { StructureMove } from '../aim/structureMoves.js';
import { type NumberOut, numberOut } from '../documents/numbersOut.js';

/** A number with its 95 % limits, as the JSON output has it. */
export interface EstimateJson {
  readonly value: NumberOut;
  readonly low: NumberOut;
  readonly high: NumberOut;
}

/** The margin of an aim before one threshold, as the JSON output has it. */
export interface MarginJson {
  /** [%] */
  readonly threshold: number;
  readonly degrees: EstimateJson;
  /** At the far end. */
  readonly millimetres: EstimateJson;
  readonly degreesOnPeak: NumberOut;
}

/** What an aim scan says, ready for `JSON.stringify`. Angles are in degrees. */
export interface AimJson {
  readonly format: 'beamkeep-aim/1';
  readonly beam: string;
  readonly axes: readonly string[];
  readonly fit: {
    readonly shape: LobeFit['shape'];
    readonly readings: number;
    readonly converged: boolean;
    /** [unit of received power] */
    readonly peak: EstimateJson;
    readonly floor: EstimateJson;
    readonly power: EstimateJson;
    readonly centre: readonly EstimateJson[];
    readonly halfAngle: readonly EstimateJson[];
    readonly residualSpread: number;
    /** Information criterion of the Gaussian less that of the super-Gaussian. */
    readonly informationGain: NumberOut;
    readonly confidence: number;
    /** Of peak, floor, centres, logarithms of half-angles and, of a super-Gaussian, of the power. */
    readonly covariance: readonly (readonly NumberOut[])[];
    readonly stray: StrayLobe | null;
  };
  /** Where the head was left; null where nobody told. */
  readonly left: {
    readonly at: readonly number[];
    readonly offset: readonly EstimateJson[];
    /** [dB] */
    readonly loss: EstimateJson;
  } | null;
  readonly residue: { readonly share: number; readonly from: 'site file' | 'scan' };
  readonly margins: { readonly alarm: MarginJson; readonly fault: MarginJson };
  readonly movement: readonly (Omit<StructureMove, 'share'> & { readonly share: NumberOut })[];
  readonly flags: readonly (ScanFlag & { readonly words: string })[];
  readonly verdict: 'good' | 'look again' | 'not known';
  readonly sentences: readonly string[];
  readonly actions: readonly string[];
  /** For drawing: the readings in received power. */
  readonly scan: { readonly angles: readonly (readonly NumberOut[])[]; readonly power: readonly NumberOut[] };
  readonly notes: readonly { readonly line: number; readonly what: string }[];
}

/**
 * What an aim scan says, as JSON has it.
 *
 * @param beam its id
 * @param scan the readings, for drawing
 * @param report from `scanReport`
 * @param notes lines that hold no reading
 */
export function aimAnswer(beam: string, scan: AimScan, report: ScanReport, notes: AimJson['notes']): AimJson {
  const { fit } = report;
  return {
    format: 'beamkeep-aim/1',
    beam,
    axes: scan.axes,
    fit: {
      shape: fit.shape,
      readings: fit.n,
      converged: fit.converged,
      peak: estimateJson(fit.peak),
      floor: estimateJson(fit.floor),
      power: estimateJson(fit.power),
      centre: fit.axes.map(({ centre }) => estimateJson(centre)),
      halfAngle: fit.axes.map(({ halfAngle }) => estimateJson(halfAngle)),
      residualSpread: fit.residualSpread,
      informationGain: numberOut(fit.informationGain),
      confidence: fit.confidence,
      covariance: fit.covariance.map((row) => Array.from(row, numberOut)),
      stray: fit.stray ?? null,
    },
    left:
      report.left && report.loss
        ? { at: report.left, offset: report.offset.map(estimateJson), loss: estimateJson(report.loss) }
        : null,
    residue: report.residue,
    margins: { alarm: marginJson(report.alarm), fault: marginJson(report.fault) },
    movement: report.moves.map((move) => ({ ...move, share: numberOut(move.share) })),
    flags: fit.flags.map((flag) => ({ ...flag, words: flagWords(flag, scan.axes) })),
    verdict: report.words.verdict,
    sentences: report.words.sentences,
    actions: report.words.actions,
    scan: {
      angles: scan.angles.map((column) => Array.from(column, numberOut)),
      power: Array.from(scan.power, numberOut),
    },
    notes,
  };
}

const estimateJson = ({ value, low, high }: Estimate): EstimateJson => ({
  value: numberOut(value),
  low: numberOut(low),
  high: numberOut(high),
});

const marginJson = ({ threshold, degrees, millimetres, degreesOnPeak }: AimMargin): MarginJson => ({
  threshold,
  degrees: estimateJson(degrees),
  millimetres: estimateJson(millimetres),
  degreesOnPeak: numberOut(degreesOnPeak),
});
