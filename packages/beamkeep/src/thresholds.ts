import type { Unit } from './attenuation/index.js';
import {
  type DirtShift,
  dirtShift,
  everyUnit,
  type NumberOut,
  numberOut,
  type StandardLimit,
  standardLimits,
  type ThresholdInUnits,
  usualDirt,
  usualThresholds,
  wallTable,
} from './commissioning/index.js';
import { beamNamed } from './log/index.js';
import { compensationBound } from './response/index.js';
import { type Beam, bearsOnResponse, type Layout, type Site } from './site/index.js';

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

/** Which beam, and what the table is to show. */
export interface ThresholdsQuestion {
  /** The beam's `id`; all beams when left out. */
  readonly beam?: string | undefined;
  /** Thresholds of the table [%]; 25, 35, 50 and the beam's own when left out. */
  readonly thresholds?: readonly number[] | undefined;
  /** Separations of the table [m]; 20 to 100 when left out. */
  readonly separations?: readonly number[] | undefined;
}

/**
 * What the thresholds of a site mean in every unit, against standards, at other separations, and under dirt.
 *
 * @throws UsageError for a beam that the site does not have, and for what is no threshold or separation
 * @example thresholds(site).beams[0]?.alarm.units['decibels-per-metre'] // 0.0151
 */
export function thresholds(site: Site, question: ThresholdsQuestion = {}): ThresholdsJson {
  const beams = question.beam === undefined ? site.beams : [beamNamed(site, question.beam)];
  return { format: 'beamkeep-thresholds/1', beams: beams.map((beam) => beamThresholds(beam, question)) };
}

function beamThresholds(beam: Beam, question: ThresholdsQuestion): BeamThresholdsJson {
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
