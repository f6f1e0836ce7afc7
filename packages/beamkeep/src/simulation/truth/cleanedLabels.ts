import { type Labels, noLabels } from './labels.js';
import type { LabelledCause } from './truthFile.js';
import { brief, isoAt, seenFrom, seenUpTo, type Viewed } from './viewed.js';

/** Losses removed by work or rain: an instant each, the first sample after. */
export function cleanedLabels(view: Viewed): Labels {
  const labels = noLabels();
  const { time } = view.scene;
  const found = new Map<number, LabelledCause>();
  const add = (instant: number, part: (typeof view.light.parts)[number], how: 'cleaned' | 'realigned') => {
    const [before, after] = [seenUpTo(view, instant - 1), seenFrom(view, instant)];
    if (before < 0 || after >= time.length) return;
    const taken = view.light.taken([part]);
    const gained = (taken[before] as number) - (taken[after] as number);
    if (gained < view.slow) {
      labels.traces.push({
        cause: 'cleaned',
        magnitude: brief(100 * gained),
        unit: '% gained',
        why: 'too little gained',
        near: gained >= 0.4 * view.slow,
      });
      return;
    }
    const other = found.get(after);
    const magnitude = brief(100 * gained + (other?.magnitude ?? 0));
    found.set(after, {
      cause: 'cleaned',
      start: isoAt(view, after),
      end: isoAt(view, after),
      magnitude,
      unit: '% gained',
      how: other?.how ?? how,
    });
  };
  for (const part of view.light.parts) {
    const { effect } = part;
    if (effect.effect === 'dirt') for (const { time: when } of effect.cleanings) add(when, part, 'cleaned');
    if ((effect.effect === 'knock' || effect.effect === 'creep') && effect.aimedAgain !== undefined)
      add(effect.aimedAgain, part, 'realigned');
    if (effect.effect === 'gain-step') {
      labels.traces.push({
        cause: 'cleaned',
        magnitude: null,
        unit: '%',
        why: 'a step of the gain or of the reading, not of the light',
        near: false,
      });
    }
  }
  labels.causes.push(...found.values());
  return labels;
}
