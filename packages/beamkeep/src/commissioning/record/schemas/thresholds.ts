import * as v from 'valibot';
import { units } from '../../../attenuation/index.js';
import { layouts } from '../../../site/index.js';
import type { ThresholdJson } from '../../answers/thresholdsAnswer.js';
import type { BeamOut } from '../commissioningRecord.js';
import { numberOutSchema, type SchemaOf, seenSchema, texts } from './common.js';

type UnitEntries = Record<(typeof units)[number], typeof numberOutSchema>;

const threshold: SchemaOf<ThresholdJson> = v.strictObject({
  percent: v.number(),
  path: v.number(),
  units: v.strictObject(Object.fromEntries(units.map((unit) => [unit, numberOutSchema])) as UnitEntries),
  smoke: v.strictObject({
    extinctionPerMetre: numberOutSchema,
    visibleExtinctionPerMetre: numberOutSchema,
    reflectingSignMetres: numberOutSchema,
    lightEmittingSignMetres: numberOutSchema,
    flamingSoot: numberOutSchema,
  }),
});

/** The thresholds of a beam in a record. */
export const beamThresholdsSchema: SchemaOf<BeamOut['thresholds']> = v.strictObject({
  id: v.string(),
  layout: v.picklist(layouts),
  separation: v.number(),
  wavelength: v.number(),
  alarm: threshold,
  fault: threshold,
  compensationBound: v.strictObject({ percent: v.number(), decibels: v.number() }),
  limits: v.array(
    v.strictObject({
      source: v.string(),
      seen: seenSchema,
      asks: v.string(),
      limit: v.nullable(v.number()),
      unit: v.string(),
      found: v.nullable(v.number()),
      kept: v.picklist(['yes', 'no', 'not known']),
    }),
  ),
  dirt: v.array(
    v.strictObject({
      dirt: v.number(),
      smoke: v.number(),
      smokeDecibels: v.number(),
      ends: v.picklist(['no', 'alarm', 'fault']),
    }),
  ),
  assumed: texts,
});
