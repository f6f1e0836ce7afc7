import { minute, rowAt } from '../../columns/index.js';
import { type Labels, noLabels } from './labels.js';
import { iso, isoAt, partsOf, seenFrom, seenUpTo, type Viewed } from './viewed.js';

/** Missing or stuck samples: thirty of them and five minutes. */
export function gapLabels(view: Viewed): Labels {
  const labels = noLabels();
  const { time, scenario } = view.scene;
  const interval = scenario.intervalSeconds * 1000;
  for (const part of partsOf(view, 'data-gap')) {
    if (part.effect.effect !== 'gap') continue;
    const { how } = part.effect;
    for (const { from, to } of part.windows) {
      const [first, past] = [rowAt(time, from), rowAt(time, to + 1)];
      if (first >= past || first === 0) continue;
      const samples = past - first;
      // What is missing runs from the last sample before to the first after; what is stuck, over the held samples.
      const begin = seenUpTo(view, (time[first] as number) - 1);
      const end =
        how === 'stuck'
          ? seenUpTo(view, time[past - 1] as number)
          : seenFrom(view, time[past] ?? Number.POSITIVE_INFINITY);
      if (begin < 0 || end >= time.length || end < 0) continue;
      const seconds = Math.round(((time[end] as number) - (time[begin] as number)) / 1000);
      // A logger that writes changes only says nothing while nothing changes: silence is no gap there.
      const silent = scenario.recording.sampling === 'on-change' && how !== 'cells';
      if (!silent && samples >= 30 && samples * interval >= 5 * minute) {
        labels.causes.push({
          cause: 'data-gap',
          start: isoAt(view, begin),
          end: isoAt(view, end),
          magnitude: seconds,
          unit: 's',
          how,
        });
      } else {
        labels.traces.push({
          cause: 'data-gap',
          magnitude: samples,
          unit: 'samples',
          why: silent ? 'silence of a logger that writes changes only' : `a short gap at ${iso(time[first] as number)}`,
          near: true,
        });
      }
    }
  }
  const { lost, broken } = scenario.recording;
  if (lost + broken > 0) {
    labels.traces.push({ cause: 'data-gap', magnitude: null, unit: 'samples', why: 'single lines lost', near: true });
  }
  if (view.noise.stepPercent > 1.5 * view.noise.samplePercent || scenario.recording.sampling === 'on-change') {
    labels.traces.push({
      cause: 'data-gap',
      magnitude: null,
      unit: 'samples',
      why: 'steady reading of a coarse scale',
      near: true,
    });
  }
  return labels;
}
