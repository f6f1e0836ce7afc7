import {
  type AimJson,
  type AngleUnit,
  aimAnswer,
  aimScanOf,
  inDegrees,
  type Structure,
  scanReport,
} from './commissioning/index.js';
import { beamNamed, smallestStep, type TextTable } from './log/index.js';
import type { Site } from './site/index.js';

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
  const notes = [...table.notes.map(({ line, what }) => ({ line, what })), ...scan.notes];
  return aimAnswer(beam.id, scan, report, notes);
}
