import * as v from 'valibot';
import type { InputOut } from '../../documents/inputOut.js';
import type { NumberOut } from '../../documents/numbersOut.js';
import type { ThinTrace } from '../../thinned.js';

/** A schema whose output is known to be a type. */
export type SchemaOf<T> = v.GenericSchema<unknown, T>;

/** A number, null where it is not known, or "infinite". */
export const numberOutSchema: SchemaOf<NumberOut> = v.nullable(v.union([v.number(), v.literal('infinite')]));

/** An instant as ISO 8601. */
export const knownInstant = v.pipe(
  v.string(),
  v.check((text) => Number.isFinite(Date.parse(text)), 'give an instant as in 2027-01-20T10:00:00.000Z'),
);

/** An instant; null where it is not known. */
export const instantSchema = v.nullable(knownInstant);

/** A list of texts. */
export const texts = v.array(v.string());

/** A number with limits. */
export const between = v.strictObject({ value: numberOutSchema, low: numberOutSchema, high: numberOutSchema });

/** A number with limits, all known. */
export const knownBetween = v.strictObject({ value: v.number(), low: v.number(), high: v.number() });

/** A thin trace, as many values as instants. */
export const traceSchema: SchemaOf<ThinTrace> = v.pipe(
  v.strictObject({ start: knownInstant, seconds: v.array(v.number()), values: v.array(v.number()) }),
  v.check(({ seconds, values }) => seconds.length === values.length, 'give as many values as seconds'),
);

/** What was read. */
export const inputSchema: SchemaOf<InputOut> = v.strictObject({
  lines: v.number(),
  dropped: v.number(),
  notes: v.array(
    v.strictObject({ line: v.number(), lines: v.number(), what: v.string(), file: v.exactOptional(v.string()) }),
  ),
});

/** How a figure is known. */
export const seenSchema = v.picklist(['read', 'from memory', 'derived', 'common practice', 'own choice']);
