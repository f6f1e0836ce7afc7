import * as v from 'valibot';
import { causeWords } from '../../packages/beamkeep/src/diagnosis/finding.js';

/*
 * A folder of labelled logs: `index.json` lists them; each has its log, its site file and its truth. A truth file says
 * of each beam what was at work (`causes`), what was at work too weakly to be asked for (`traces`), where dust or mist
 * grew as smoke may (`couldBeSmoke`) and, of logs cut short, when dirt would have reached the threshold (`forecast`).
 * Keys that the comparison does not need are let through unread.
 */

const cause = v.picklist(causeWords, ({ received }) => `${received} is not one of the causes`);
const instant = v.pipe(
  v.string(),
  v.check((text) => !Number.isNaN(Date.parse(text)), 'not an instant'),
  v.transform((text) => Date.parse(text)),
);
const day = v.pipe(v.string(), v.isoDate());

const event = v.object({
  cause,
  start: instant,
  end: instant,
  magnitude: v.nullish(v.number()),
  unit: v.optional(v.string()),
  how: v.optional(v.string()),
  accepts: v.optional(v.array(cause), []),
});

const beam = v.object({
  id: v.string(),
  from: instant,
  to: instant,
  causes: v.array(event),
  traces: v.optional(v.array(v.object({ cause, near: v.boolean() })), []),
  couldBeSmoke: v.optional(v.array(v.object({ start: instant, end: instant })), []),
  forecast: v.nullish(
    v.object({
      obscuration: v.number(),
      date: v.nullable(day),
      dateWithDailyLow: v.nullish(day),
    }),
  ),
});

export const truthSchema = v.object({
  format: v.literal('beamkeep-truth/1'),
  kind: v.string(),
  samplingSeconds: v.number(),
  beams: v.array(beam),
});

export const corpusSchema = v.object({
  format: v.literal('beamkeep-corpus/1'),
  logs: v.array(v.object({ id: v.string(), log: v.string(), site: v.string(), truth: v.string() })),
});

/** One labelled stretch (or instant: start = end) in which a cause is at work. Instants in ms. */
export type LabelledEvent = v.InferOutput<typeof event>;
/** What is known of one beam. */
export type BeamTruth = v.InferOutput<typeof beam>;
/** What is known of one log. */
export type Truth = v.InferOutput<typeof truthSchema>;
/** The list of labelled logs. */
export type Corpus = v.InferOutput<typeof corpusSchema>;
