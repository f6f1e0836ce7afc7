import { rowAt } from '../../columns/index.js';
import type { Scene } from '../scene.js';
import type { Part, Window } from './part.js';

/** Samples that are missing (whole lines, or this beam's cells) or stuck at one value. */
export interface Gap {
  readonly effect: 'gap';
  readonly how: 'lines' | 'cells' | 'stuck';
  readonly stretches: readonly Window[];
}

/** Which samples of a beam are missing or held. */
export function gap(plan: Gap, { time }: Scene): Part<Gap> {
  const mask = new Uint8Array(time.length);
  for (const { from, to } of plan.stretches) mask.fill(1, rowAt(time, from), rowAt(time, to + 1));
  return {
    effect: plan,
    cause: 'data-gap',
    windows: plan.stretches,
    ...(plan.how === 'stuck' ? { held: mask } : { missing: mask }),
  };
}
