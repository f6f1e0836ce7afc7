import type { Samples } from '../columns/index.js';
import type { Beam } from '../site/index.js';
import { type BeamMemory, beamResponder, type ResponseOptions } from './beamResponder.js';
import { equipmentObscuration } from './equipmentObscuration.js';
import type { Change, ResponseCircumstances } from './responder.js';

/** What a beam's equipment did over a log, and what to carry over to the next part of it. */
export interface Response {
  /** The state at the first usable sample, then every change; a part of a log that goes on tells changes only. */
  readonly changes: readonly Change[];
  readonly memory: BeamMemory;
}

/**
 * What a beam's equipment did over a log of its level.
 *
 * @param beam of the site
 * @param samples instants [ms] and levels [share of clean air]; NaN is missing
 * @param circumstances how the samples came about
 * @param options what to model beyond the settings, and the memory of the part of the log before this one
 * @example respondTo(beam, samples, { sampling: 'regular', intervalSeconds: 1, resets: [] }).changes
 */
export function respondTo(
  beam: Beam,
  { time, level }: Samples,
  circumstances: ResponseCircumstances,
  { carried, ...options }: ResponseOptions & { readonly carried?: BeamMemory | undefined } = {},
): Response {
  const changes: Change[] = [];
  const response = beamResponder(beam, circumstances, (change) => changes.push(change), options, carried);
  for (let row = 0; row < time.length; row++)
    response.feed(time[row] as number, equipmentObscuration(beam, level[row] as number));
  return { changes, memory: response.memory() };
}
