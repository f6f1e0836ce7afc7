import type { Unit } from '../../attenuation/index.js';
import { compensationBound } from '../../response/index.js';
import { type Beam, bearsOnResponse, type Layout } from '../../site/index.js';
import { type NumberOut, numberOut } from '../documents/numbersOut.js';
import { type DirtShift, dirtShift, usualDirt } from '../thresholds/dirtShift.js';
import { everyUnit, type ThresholdInUnits } from '../thresholds/everyUnit.js';
import { type StandardLimit, standardLimits } from '../thresholds/standardLimits.js';
import { usualThresholds, wallTable } from '../thresholds/wallTable.js';

/** A threshold in every unit, as the JSON output has it. */
export interface ThresholdJson {
  /** As set [%]. */
  readonly percent: number;
  /** Length of smoke that the light crosses [m]. */
  readonly path: number;
  readonly units: Readonly<Record<Unit, NumberOut>>;
  /** If even smoke along the whole path is the only cause. */
  readonly smoke: {
    /** [1/m], at the beam's wavelength and at 633 nm */
    readonly extinctionPerMetre: NumberOut;
    readonly visibleExtinctionPerMetre: NumberOut;
    /** How far a reflecting, and a light-emitting sign can be read [m]. */
    readonly reflectingSignMetres: NumberOut;
    readonly lightEmittingSignMetres: NumberOut;
    /** Mass of soot from flames [kg/m3]. */
    readonly flamingSoot: NumberOut;
  };
}

/** A limit of a standard, as the JSON output has it. */
export interface LimitJson extends Omit<StandardLimit, 'limit' | 'found'> {
  readonly limit: number | null;
  readonly found: number | null;
}

/** The thresholds of one beam. */
export interface BeamThresholdsJson {
  readonly id: string;
  readonly layout: Layout;
  /** [m] */
  readonly separation: number;
  /** [nm] */
  readonly wavelength: number;
  readonly alarm: ThresholdJson;
  readonly fault: ThresholdJson;
  /** The most that compensation may make of the alarm threshold, by the standard: from memory. */
  readonly compensationBound: { readonly percent: number; readonly decibels: number };
  readonly limits: readonly LimitJson[];
  /** How dirt moves the alarm threshold. */
  readonly dirt: readonly DirtShift[];
  /** The table for the wall: a row a separation, a cell a threshold. */
  readonly table: {
    readonly thresholds: readonly number[];
    readonly rows: readonly { readonly separation: number; readonly cells: readonly ThresholdJson[] }[];
  };
  readonly assumed: readonly string[];
}

/** What thresholds mean, ready for `JSON.stringify`. */
export interface ThresholdsJson {
  readonly format: 'beamkeep-thresholds/1';
  readonly beams: readonly BeamThresholdsJson[];
}

/** What the table of thresholds is to show. */
export interface WallQuestion {
  /** Thresholds of the table [%]; 25, 35, 50 and the beam's own when left out. */
  readonly thresholds?: readonly number[] | undefined;
  /** Separations of the table [m]; 20 to 100 when left out. */
  readonly separations?: readonly number[] | undefined;
}

/** What the thresholds of a beam mean, as JSON has it. */
export function beamThresholds(beam: Beam, question: WallQuestion = {}): BeamThresholdsJson {
  const { limitPercent, limitDecibels } = compensationBound(beam.alarmThreshold);
  const table = wallTable(beam, question.thresholds ?? usualThresholds(beam.alarmThreshold), question.separations);
  return {
    id: beam.id,
    layout: beam.layout,
    separation: beam.separation,
    wavelength: beam.wavelength,
    alarm: thresholdJson(everyUnit(beam.alarmThreshold, beam)),
    fault: thresholdJson(everyUnit(beam.faultThreshold, beam)),
    compensationBound: { percent: limitPercent, decibels: limitDecibels },
    limits: standardLimits(beam).map((line) => ({ ...line, limit: line.limit ?? null, found: line.found ?? null })),
    dirt: usualDirt.map((dirt) => dirtShift(beam, dirt)),
    table: {
      thresholds: table.thresholds,
      rows: table.rows.map(({ separation, cells }) => ({ separation, cells: cells.map(thresholdJson) })),
    },
    assumed: beam.assumed.filter((words) => bearsOnResponse(words) || words.startsWith('wavelength')),
  };
}

const thresholdJson = ({ percent, pathMetres, units, smoke }: ThresholdInUnits): ThresholdJson => ({
  percent,
  path: pathMetres,
  units: Object.fromEntries(Object.entries(units).map(([unit, amount]) => [unit, numberOut(amount)])) as Record<
    Unit,
    NumberOut
  >,
  smoke: {
    extinctionPerMetre: numberOut(smoke.extinctionPerMetre),
    visibleExtinctionPerMetre: numberOut(smoke.visibleExtinctionPerMetre),
    reflectingSignMetres: numberOut(smoke.reflectingSignMetres),
    lightEmittingSignMetres: numberOut(smoke.lightEmittingSignMetres),
    flamingSoot: numberOut(smoke.flamingSoot.value),
  },
});
