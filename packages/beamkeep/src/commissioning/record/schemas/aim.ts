import * as v from 'valibot';
import type { AimJson } from '../../answers/aimAnswer.js';
import { between, numberOutSchema, type SchemaOf, seenSchema, texts } from './common.js';

const margin = v.strictObject({
  threshold: v.number(),
  degrees: between,
  millimetres: between,
  degreesOnPeak: numberOutSchema,
});
const angles = v.array(v.number());

/** `beamkeep-aim/1` */
export const aimSchema: SchemaOf<AimJson> = v.strictObject({
  format: v.literal('beamkeep-aim/1'),
  beam: v.string(),
  axes: texts,
  fit: v.strictObject({
    shape: v.picklist(['gaussian', 'super-gaussian']),
    readings: v.number(),
    converged: v.boolean(),
    peak: between,
    floor: between,
    power: between,
    centre: v.array(between),
    halfAngle: v.array(between),
    residualSpread: v.number(),
    informationGain: numberOutSchema,
    confidence: v.number(),
    covariance: v.array(v.array(numberOutSchema)),
    stray: v.nullable(v.strictObject({ share: v.number(), at: angles, ownPeak: v.boolean() })),
  }),
  left: v.nullable(v.strictObject({ at: angles, offset: v.array(between), loss: between })),
  residue: v.strictObject({ share: v.number(), from: v.picklist(['site file', 'scan']) }),
  margins: v.strictObject({ alarm: margin, fault: margin }),
  movement: v.array(
    v.strictObject({
      what: v.string(),
      degrees: v.number(),
      millimetres: v.number(),
      share: numberOutSchema,
      verdict: v.picklist(['within', 'tight', 'beyond', 'not known']),
      formula: v.string(),
      source: v.string(),
      seen: seenSchema,
    }),
  ),
  flags: v.array(
    v.strictObject({
      kind: v.picklist([
        'second-peak',
        'shoulder',
        'raised-floor',
        'clipped',
        'few-points',
        'peak-not-crossed',
        'noisy',
      ]),
      at: v.exactOptional(angles),
      size: v.number(),
      words: v.string(),
    }),
  ),
  verdict: v.picklist(['good', 'look again', 'not known']),
  sentences: texts,
  actions: texts,
  scan: v.strictObject({ angles: v.array(v.array(numberOutSchema)), power: v.array(numberOutSchema) }),
  notes: v.array(v.strictObject({ line: v.number(), what: v.string() })),
});
