import * as v from 'valibot';
import { readDocument } from '../documents/readDocument.js';

/*
 * A proof sheet is the list of what a person does to one beam, in order:
 *
 *     cover-slowly    draw a cover over the whole reflector by hand, over five seconds or more: smoke, to the equipment
 *     cover-at-once   cover the whole reflector with one movement: a blocked beam
 *     part-cover      cover part of the reflector: by millimetres from an edge or across the middle, or by a share (grid)
 *     filter          hold a filter before the head
 *     uncover         take it away again
 *     reset           reset the detector
 *     panel-alarm     simulated alarm to the panel, which the received signal does not show
 */

const above = (least: number, what: string) =>
  v.pipe(
    v.number(),
    v.check((value) => Number.isFinite(value) && value > least, `give ${what}, a number above ${least}`),
  );
const share = (what: string) =>
  v.pipe(
    v.number(),
    v.check((value) => value > 0 && value <= 100, `give ${what}, above 0 and at most 100`),
  );
const text = v.pipe(
  v.string(),
  v.check((value) => value.trim() !== '', 'give a text that is not empty'),
);

const always = { hold: v.optional(above(0, 'seconds')), time: v.optional(text), note: v.optional(text) };

const stepSchema = v.variant('do', [
  v.strictObject({ do: v.literal('cover-slowly'), ...always }),
  v.strictObject({ do: v.literal('cover-at-once'), ...always }),
  v.strictObject({
    do: v.literal('part-cover'),
    millimetres: v.optional(above(0, 'the width of the cover in millimetres')),
    from: v.optional(v.picklist(['edge', 'middle'])),
    obscuration: v.optional(share('the share of the light that the cover hides [%]')),
    ...always,
  }),
  v.strictObject({
    do: v.literal('filter'),
    transmittance: v.pipe(
      v.number(),
      v.check((value) => value > 0 && value < 1, 'give its single-pass transmittance, above 0 and below 1'),
    ),
    crossings: v.optional(v.picklist([1, 2])),
    ...always,
  }),
  v.strictObject({ do: v.literal('uncover'), ...always }),
  v.strictObject({ do: v.literal('reset'), ...always }),
  v.strictObject({ do: v.literal('panel-alarm'), ...always }),
]);

/** A reflector as a sheet or a command names it. */
export const reflectorSchema = v.variant('shape', [
  v.strictObject({
    shape: v.literal('rectangle'),
    width: above(0, 'the width across the edge of the cover in millimetres'),
    height: v.optional(above(0, 'the height in millimetres')),
  }),
  v.strictObject({ shape: v.literal('round'), diameter: above(0, 'the diameter in millimetres') }),
]);

/** A proof sheet as written. */
export const proofSheetSchema = v.strictObject({
  format: v.literal('beamkeep-proof-sheet/1'),
  beam: text,
  reflector: v.optional(reflectorSchema),
  lit: v.optional(v.picklist(['evenly', 'by-the-lobe'])),
  steps: v.pipe(v.array(stepSchema), v.minLength(1, 'give at least one step')),
});

/** One step of a proof, as a person does it. `hold` [s], `time` as written, `transmittance` of a single pass. */
export type ProofStep = v.InferOutput<typeof stepSchema>;

/** Words of the steps. */
export type StepWord = ProofStep['do'];

/** A list of steps for one beam. `lit`: how the reflector is lit; evenly when left out. */
export type ProofSheet = v.InferOutput<typeof proofSheetSchema>;

/** A reflector and its size [mm]. */
export type ReflectorSize = v.InferOutput<typeof reflectorSchema>;

/**
 * Reads a proof sheet.
 *
 * @param input JSON text, or the value that it holds
 * @param fileName named in errors
 * @throws UsageError for anything that is no proof sheet, naming the place
 */
export const parseProofSheet = (input: unknown, fileName = 'proof sheet'): ProofSheet =>
  readDocument(input, proofSheetSchema, fileName);
