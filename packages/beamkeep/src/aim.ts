import {
  type AimMargin,
  type AngleUnit,
  aimScanOf,
  flagWords,
  inDegrees,
  type NumberOut,
  numberOut,
  type Structure,
  type StructureMove,
  scanReport,
} from './commissioning/index.js';
import { beamNamed, smallestStep, type TextTable } from './log/index.js';
import type { Estimate, LobeFit, ScanFlag, StrayLobe } from './optics/index.js';
import type { Site } from './site/index.js';

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

/** What is known beside the scan. */
export interface AimQuestion {
  /** The beam's `id`; may be left out where the site has one only. */
  readonly beam?: string | undefined;
  /** Where the head was left, one an axis [angleUnit]. */
  readonly left?: readonly number[] | undefined;
  /** In what the scan and `left` tell angles; degrees when left out. */
  readonly angleUnit?: AngleUnit | undefined;
  /** Columns of the scan, where their names do not tell. */
  readonly level?: string | undefined;
  readonly angles?: readonly string[] | undefined;
  /** What holds the head. */
  readonly structure?: Structure | undefined;
}

/**
 * Tells whether a head is on the peak of its lobe, on the flank or on a stray reflection, and what margin it has.
 *
 * @param table the aim scan: one or two angles and a level, from `textTable`
 * @param site the site: thresholds, separation and covered reading of the beam
 * @param question which beam, where the head was left, what holds it
 * @returns lobe, offset, loss, margins, movement of the structure, doubts and what to do
 * @throws UsageError where the scan cannot be used
 * @example aim(textTable(csv, 'scan.csv'), site, { beam: 'B1', left: [0.5] }).verdict // look again
 */
export function aim(table: TextTable, site: Site, question: AimQuestion = {}): AimJson {
  const beam = beamNamed(site, question.beam);
  const { angleUnit = 'degrees', structure } = question;
  const scan = aimScanOf(table, { ...beam, ...question });
  const left = question.left?.map((angle) => inDegrees(angle, angleUnit, beam.separation));
  const steps = new Map<number, number>();
  for (const value of scan.power) if (!Number.isNaN(value)) steps.set(value, (steps.get(value) ?? 0) + 1);
  const report = scanReport(scan, beam, { left, structure, step: smallestStep(steps) });
  const { fit } = report;
  return {
    format: 'beamkeep-aim/1',
    beam: beam.id,
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
    flags: fit.flags.map((flag) => ({ ...flag, words: flagWords(flag) })),
    verdict: report.words.verdict,
    sentences: report.words.sentences,
    actions: report.words.actions,
    scan: {
      angles: scan.angles.map((column) => Array.from(column, numberOut)),
      power: Array.from(scan.power, numberOut),
    },
    notes: [...table.notes.map(({ line, what }) => ({ line, what })), ...scan.notes],
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
