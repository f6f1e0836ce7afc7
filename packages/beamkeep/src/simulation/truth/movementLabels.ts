import { rowAt } from '../../columns/index.js';
import { dayWindows } from '../effects/movement.js';
import { type Labels, noLabels } from './labels.js';
import { type Came, labelSpells } from './spells.js';
import { brief, partsOf, type Viewed } from './viewed.js';

const unit = '% a day, trough to crest';

/** Daily movement: three days of enough swing, and a tenth of all days. */
export function movementLabels(view: Viewed): Labels {
  const parts = partsOf(view, 'building-movement');
  const labels = noLabels();
  if (parts.length === 0) return labels;
  const swings = dailySwings(view, view.light.taken(parts));
  const strong = swings.filter(({ size }) => size >= view.slow);
  const most = Math.max(0, ...swings.map(({ size }) => size));
  if (strong.length >= 3 && strong.length >= swings.length / 10) {
    const { causes, traces } = labelSpells('building-movement', strong, 2, unit);
    labels.causes.push(...causes);
    labels.traces.push(...traces);
    if (strong.length < swings.length) {
      labels.traces.push({
        cause: 'building-movement',
        magnitude: null,
        unit: '% a day',
        why: 'days of small swing beside the spells',
        near: true,
      });
    }
  } else {
    const near = most >= 0.75 * view.slow;
    labels.traces.push({
      cause: 'building-movement',
      magnitude: brief(100 * most),
      unit: '% a day',
      why: 'harmless sway',
      near,
    });
  }
  return labels;
}

/** Swing of an effect on each local day that the log covers by a quarter at least. */
export function dailySwings({ scene, seen }: Viewed, taken: Float64Array): Came[] {
  const { time } = scene;
  const perDay = 86_400 / scene.scenario.intervalSeconds;
  const found: Came[] = [];
  for (const { from, to } of dayWindows(scene)) {
    let [low, high, rows, first, last] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0, -1, -1];
    for (let i = rowAt(time, from); i < time.length && (time[i] as number) <= to; i++) {
      if (seen[i] === 0) continue;
      low = Math.min(low, taken[i] as number);
      high = Math.max(high, taken[i] as number);
      rows += 1;
      if (first < 0) first = i;
      last = i;
    }
    if (rows >= perDay / 4) found.push({ from: time[first] as number, to: time[last] as number, size: high - low });
  }
  return found;
}
