import * as v from 'valibot';
import type { ProofJson } from '../../answers/proofAnswer.js';
import {
  inputSchema,
  instantSchema,
  knownBetween,
  numberOutSchema,
  type SchemaOf,
  texts,
  traceSchema,
} from './common.js';

const state = v.picklist(['normal', 'fire', 'fault']);

const expected = v.strictObject({
  do: v.picklist(['cover-slowly', 'cover-at-once', 'part-cover', 'filter', 'uncover', 'reset', 'panel-alarm']),
  words: v.string(),
  obscuration: v.nullable(knownBetween),
  signal: v.nullable(v.picklist(['fire', 'fault'])),
  window: v.nullable(v.strictObject({ from: v.number(), to: v.number() })),
  state,
  holdSeconds: v.number(),
  doubts: texts,
  cautions: texts,
});

/** `beamkeep-proof/1` */
export const proofSchema: SchemaOf<ProofJson> = v.strictObject({
  format: v.literal('beamkeep-proof/1'),
  beam: v.string(),
  verdict: v.picklist(['pass', 'open', 'fail']),
  clean: v.number(),
  steps: v.array(
    v.strictObject({
      expected,
      verdict: v.picklist(['pass', 'fail', 'not shown']),
      reasons: texts,
      shownBy: v.picklist(['panel', 'signal', 'nobody']),
      start: instantSchema,
      end: instantSchema,
      obscuration: numberOutSchema,
      riseSeconds: numberOutSchema,
      thresholdAt: instantSchema,
      signalAt: instantSchema,
      state: v.nullable(state),
    }),
  ),
  unexplained: v.array(v.strictObject({ start: instantSchema, end: instantSchema, largest: v.number() })),
  panelList: v.boolean(),
  trace: traceSchema,
  assumed: texts,
  input: inputSchema,
});
