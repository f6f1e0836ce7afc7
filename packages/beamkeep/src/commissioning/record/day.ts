import * as v from 'valibot';
import { deflectionLimits, thermalExpansion } from '../../numbers/index.js';
import { angleUnits } from '../aim/aimScan.js';
import { readDocument } from '../documents/readDocument.js';

/*
 * The file of a commissioning day: which scan, which logged tests belong to which beam, and what people must write down
 * because no signal shows it. Paths are meant from the folder of the day file.
 */

const text = v.pipe(
  v.string(),
  v.check((value) => value.trim() !== '', 'give a text that is not empty'),
);
const texts = v.array(text);
const above = v.pipe(
  v.number(),
  v.check((value) => Number.isFinite(value) && value > 0, 'give a number above 0'),
);
const finite = v.pipe(
  v.number(),
  v.check((value) => Number.isFinite(value), 'give a number'),
);
const names = <T extends Record<string, unknown>>(table: T) => Object.keys(table) as (keyof T & string)[];

const told = v.strictObject({ who: text, time: text });

const structureSchema = v.strictObject({
  spanMetres: v.optional(above),
  roof: v.optional(v.picklist(names(deflectionLimits))),
  heightMetres: v.optional(above),
  material: v.optional(v.picklist(names(thermalExpansion))),
  depthMetres: v.optional(above),
  gradientKelvin: v.optional(above),
  lengthMetres: v.optional(above),
  warmingKelvin: v.optional(above),
});

const beamSchema = v.strictObject({
  id: text,
  scan: v.optional(text),
  left: v.optional(
    v.pipe(v.array(finite), v.minLength(1, 'give one angle or two'), v.maxLength(2, 'give one angle or two')),
  ),
  angleUnit: v.optional(v.picklist(angleUnits)),
  structure: v.optional(structureSchema),
  covered: v.optional(text),
  proof: v.optional(v.strictObject({ log: text, sheet: v.optional(text) })),
});

const daySchema = v.strictObject({
  format: v.literal('beamkeep-day/1'),
  site: text,
  date: v.pipe(v.string(), v.isoDate('give a date as in 2027-01-20')),
  people: v.optional(v.array(v.strictObject({ role: text, name: text, licence: v.optional(text) }))),
  beams: v.array(beamSchema),
  events: v.optional(text),
  clockOffsetSeconds: v.optional(finite),
  log: v.optional(texts),
  impairment: v.optional(
    v.strictObject({
      from: text,
      until: v.optional(text),
      told: v.optional(v.array(told)),
      fireWatch: v.optional(v.strictObject({ by: text, from: text, until: v.optional(text) })),
      returned: v.optional(v.strictObject({ time: text, by: text, told: v.optional(v.array(told)) })),
    }),
  ),
  deviations: v.optional(texts),
  notDone: v.optional(texts),
  remarks: v.optional(texts),
});

/** A commissioning day as written. */
export type CommissioningDay = v.InferOutput<typeof daySchema>;

/** What belongs to one beam on that day. */
export type DayBeam = v.InferOutput<typeof beamSchema>;

/**
 * Reads the file of a commissioning day.
 *
 * @param input JSON text, or the value that it holds
 * @param fileName named in errors
 * @throws UsageError for anything that is no day file, naming the place
 */
export const parseDay = (input: unknown, fileName = 'day file'): CommissioningDay =>
  readDocument(input, daySchema, fileName);
