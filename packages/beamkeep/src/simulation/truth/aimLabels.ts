import { hour } from '../../columns/index.js';
import { rank } from '../grid.js';
import { type Labels, noLabels } from './labels.js';
import { dailySwings } from './movementLabels.js';
import { brief, isoAt, partsOf, seenFrom, seenUpTo, type Viewed } from './viewed.js';

/** Knocks: from the first sample after the step to the last before it is aimed again. */
export function knockLabels(view: Viewed): Labels {
  const labels = noLabels();
  const { time } = view.scene;
  for (const part of partsOf(view, 'misalignment-step')) {
    const { effect } = part;
    if (effect.effect !== 'knock') continue;
    const [first, last] = [
      seenFrom(view, effect.time),
      seenUpTo(view, (effect.aimedAgain ?? Number.POSITIVE_INFINITY) - 1),
    ];
    if (first === 0 || last - first < 3) continue;
    const taken = view.light.taken([part]);
    // Over its first day: what comes later may hide it or make more of it.
    const until = Math.min(last, seenUpTo(view, (time[first] as number) + 24 * hour));
    const lost = rank(taken.subarray(first, until + 1), 0.5);
    if (lost >= view.slow) {
      labels.causes.push({
        cause: 'misalignment-step',
        start: isoAt(view, first),
        end: isoAt(view, last),
        magnitude: brief(100 * lost),
        unit: '% lost',
      });
    } else {
      labels.traces.push({
        cause: 'misalignment-step',
        magnitude: brief(100 * lost),
        unit: '% lost',
        why: 'a small knock',
        near: lost >= 0.5 * view.slow,
      });
    }
  }
  return labels;
}

/** Creeping aim, and which of its two marks this log shows. */
export function creepLabels(view: Viewed): Labels {
  const labels = noLabels();
  const parts = partsOf(view, 'misalignment-drift');
  const [part] = parts;
  if (part?.effect.effect !== 'creep') return labels;
  const { effect } = part;
  const { time } = view.scene;
  const [first, last] = [
    seenFrom(view, effect.from),
    seenUpTo(view, (effect.aimedAgain ?? Number.POSITIVE_INFINITY) - 1),
  ];
  if (last - first < 3) return labels;
  const taken = view.light.taken(parts);
  const lost = dailyMiddle(taken, time, last) - (taken[first] as number);
  if (lost < view.slow) {
    labels.traces.push({
      cause: 'misalignment-drift',
      magnitude: brief(100 * lost),
      unit: '%',
      why: 'creeps too little',
      near: lost >= 0.5 * view.slow,
    });
    return labels;
  }
  const length = (time[last] as number) - (time[first] as number);
  const third = (share: number) => dailyMiddle(taken, time, seenUpTo(view, (time[first] as number) + share * length));
  const [early, late] = [third(1 / 3) - (taken[first] as number), dailyMiddle(taken, time, last) - third(2 / 3)];
  const accelerates = late > 1.6 * early && late - early > view.slow;
  const sway = partsOf(view, 'building-movement');
  const swings = sway.length > 0 ? dailySwings(view, view.light.taken(sway)) : [];
  const piece = Math.ceil(swings.length / 4);
  const middle = (list: typeof swings) =>
    rank(
      list.map(({ size }) => size),
      0.5,
    );
  const grown = swings.length >= 8 ? middle(swings.slice(-piece)) - middle(swings.slice(0, piece)) : 0;
  const swayGrows = grown > view.slow;
  labels.causes.push({
    cause: 'misalignment-drift',
    start: isoAt(view, first),
    end: isoAt(view, last),
    magnitude: brief(100 * lost),
    unit: '% obscuration at the end',
    accelerates,
    swayGrows,
    ...(accelerates || swayGrows ? {} : { accepts: ['contamination' as const] }),
  });
  return labels;
}

/** Median over the day that ends at a row. */
function dailyMiddle(taken: Float64Array, time: Float64Array, row: number): number {
  let begin = row;
  while (begin > 0 && (time[row] as number) - (time[begin - 1] as number) < 24 * hour) begin--;
  return rank(taken.subarray(begin, row + 1), 0.5);
}
