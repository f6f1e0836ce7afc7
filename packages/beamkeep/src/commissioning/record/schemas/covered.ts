import * as v from 'valibot';
import type { CoveredJson } from '../../answers/coveredAnswer.js';
import {
  inputSchema,
  instantSchema,
  knownBetween,
  numberOutSchema,
  type SchemaOf,
  texts,
  traceSchema,
} from './common.js';

const stretch = v.strictObject({
  from: instantSchema,
  to: instantSchema,
  samples: v.number(),
  reading: v.number(),
  share: v.number(),
  spread: v.number(),
});
const verdict = v.picklist(['fit', 'caution', 'refuse']);
const reach = v.strictObject({
  threshold: v.number(),
  reachable: v.picklist(['yes', 'no', 'doubtful']),
  trueObscuration: numberOutSchema,
  decibels: numberOutSchema,
  trueDecibels: numberOutSchema,
  timesTheSmoke: numberOutSchema,
  verdict,
});

/** `beamkeep-covered/1` */
export const coveredSchema: SchemaOf<CoveredJson> = v.strictObject({
  format: v.literal('beamkeep-covered/1'),
  beam: v.string(),
  before: v.nullable(stretch),
  covered: stretch,
  after: v.nullable(stretch),
  ratio: knownBetween,
  largestObscuration: v.strictObject({ value: v.number(), low: v.number() }),
  alarm: reach,
  fault: reach,
  drift: v.nullable(v.strictObject({ percent: v.number(), low: v.number(), high: v.number(), tells: v.boolean() })),
  ratioOfSiteFile: v.nullable(v.number()),
  coveredSubtracted: v.boolean(),
  verdict,
  sentences: texts,
  actions: texts,
  trace: traceSchema,
  assumed: texts,
  input: inputSchema,
});
