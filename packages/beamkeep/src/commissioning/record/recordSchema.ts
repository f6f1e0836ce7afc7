import * as v from 'valibot';
import { isZone, layouts, signalUnits } from '../../site/index.js';
import { readDocument } from '../documents/readDocument.js';
import type { BeamOut, CommissioningRecord } from './commissioningRecord.js';
import { aimSchema } from './schemas/aim.js';
import { instantSchema, knownInstant, type SchemaOf, seenSchema, texts } from './schemas/common.js';
import { coveredSchema } from './schemas/covered.js';
import { proofSchema } from './schemas/proof.js';
import { beamThresholdsSchema } from './schemas/thresholds.js';

const given = v.nullable(v.number());
const told = v.array(v.strictObject({ who: v.string(), time: v.string() }));
const points = v.array(v.strictObject({ beam: v.nullable(v.string()), words: v.string() }));

const settings: SchemaOf<BeamOut['settings']> = v.strictObject({
  layout: v.picklist(layouts),
  separation: v.number(),
  height: given,
  bearing: given,
  tilt: given,
  wavelength: v.number(),
  halfAngle: given,
  signalUnit: v.picklist(signalUnits),
  cleanAir: given,
  covered: given,
  coveredSubtracted: v.boolean(),
  compensation: v.union([v.picklist(['none', 'unknown']), v.strictObject({ limitDecibels: v.number() })]),
  alarmThreshold: v.number(),
  alarmDelay: v.number(),
  faultThreshold: v.number(),
  faultDelay: v.number(),
  latching: v.boolean(),
  hysteresis: v.number(),
  assumed: texts,
});

const finding = v.strictObject({
  beam: v.string(),
  cause: v.string(),
  severity: v.picklist(['note', 'watch', 'act']),
  confidence: v.number(),
  start: knownInstant,
  end: knownInstant,
  summary: v.string(),
  onSite: v.nullable(
    v.strictObject({
      verdict: v.picklist(['confirmed', 'rejected', 'relabelled']),
      cause: v.nullable(v.string()),
      note: v.string(),
    }),
  ),
});

/**
 * `beamkeep-record/1`: every key is required, so that nothing can be missing without being shown as missing. `findings`
 * came later: a record without them is read as one that has none.
 */
export const recordSchema: SchemaOf<CommissioningRecord> = v.strictObject({
  format: v.literal('beamkeep-record/1'),
  made: knownInstant,
  date: v.string(),
  site: v.strictObject({
    name: v.string(),
    timeZone: v.pipe(v.string(), v.check(isZone, 'give an IANA zone')),
    latitude: given,
    longitude: given,
  }),
  people: v.array(v.strictObject({ role: v.string(), name: v.string(), licence: v.nullable(v.string()) })),
  beams: v.array(
    v.strictObject({
      id: v.string(),
      settings,
      thresholds: beamThresholdsSchema,
      aim: v.nullable(aimSchema),
      covered: v.nullable(coveredSchema),
      proof: v.nullable(proofSchema),
    }),
  ),
  impairment: v.nullable(
    v.strictObject({
      from: v.string(),
      until: v.nullable(v.string()),
      told,
      fireWatch: v.nullable(v.strictObject({ by: v.string(), from: v.string(), until: v.nullable(v.string()) })),
      returned: v.nullable(v.strictObject({ time: v.string(), by: v.string(), told })),
    }),
  ),
  log: v.nullable(v.strictObject({ from: instantSchema, to: instantSchema, lines: v.number(), dropped: v.number() })),
  findings: v.optional(v.nullable(v.array(finding)), null),
  deviations: texts,
  notDone: texts,
  remarks: texts,
  attention: points,
  missing: points,
  cautions: v.array(v.strictObject({ words: v.string(), source: v.string() })),
  bases: v.array(
    v.strictObject({
      key: v.string(),
      says: v.string(),
      formula: v.string(),
      source: v.string(),
      seen: v.union([seenSchema, v.literal('as given')]),
    }),
  ),
});

/**
 * Reads a commissioning record back.
 *
 * @param input JSON text, or the value that it holds
 * @param fileName named in errors
 * @throws UsageError for anything that is no record of this version, naming the place
 */
export const parseRecord = (input: unknown, fileName = 'record'): CommissioningRecord =>
  readDocument(input, recordSchema, fileName);
