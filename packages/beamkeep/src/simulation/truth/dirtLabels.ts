import { day } from '../../columns/index.js';
import { type Dirt, dirtCourse, dirtPlace } from '../effects/dirt.js';
import { type Labels, noLabels } from './labels.js';
import type { ForecastTruth } from './truthFile.js';
import { brief, isoAt, partsOf, seenFrom, seenUpTo, type Viewed } from './viewed.js';

/** Dirt: one label from each cleaning that shows to the next. */
export function dirtLabels(view: Viewed): Labels {
  const labels = noLabels();
  const parts = partsOf(view, 'contamination');
  const [part] = parts;
  if (part?.effect.effect !== 'dirt') return labels;
  const { effect } = part;
  const { time } = view.scene;
  const taken = view.light.taken(parts);
  const dirtOnly = (row: number) => 1 - 10 ** (-(part.loss?.[row] as number) / 10);
  const end = time[time.length - 1] as number;
  const cuts = effect.cleanings.filter((cleaning) => {
    const [before, after] = [seenUpTo(view, cleaning.time - 1), seenFrom(view, cleaning.time)];
    return before >= 0 && after < time.length && dirtOnly(before) - dirtOnly(after) >= view.slow;
  });
  const marks = [effect.from ?? view.scene.scenario.start, ...cuts.map((cut) => cut.time)];
  for (const [k, mark] of marks.entries()) {
    const first = seenFrom(view, mark);
    const last = seenUpTo(view, (marks[k + 1] ?? end + 1) - 1);
    if (first >= last) continue;
    // Under gain control only what the gain leaves is to be seen, unless the gain itself is logged.
    const hidden = view.beam.gainControl !== undefined && view.beam.gainControl.column === undefined;
    const gained = hidden ? (taken[last] as number) - (taken[first] as number) : dirtOnly(last) - dirtOnly(first);
    const magnitude = brief(100 * dirtOnly(last));
    if (gained >= view.slow) {
      labels.causes.push({
        cause: 'contamination',
        start: isoAt(view, first),
        end: isoAt(view, last),
        magnitude,
        unit: '% obscuration at the end of the stretch',
        gained: brief(100 * gained),
      });
    } else {
      const why = hidden ? 'hidden by the gain control' : 'too little dirt in a stretch';
      const near = gained >= 0.4 * view.slow || (hidden && dirtOnly(last) - dirtOnly(first) >= view.slow);
      labels.traces.push({ cause: 'contamination', magnitude: brief(100 * gained), unit: '%', why, near });
    }
  }
  return labels;
}

/** The day on which the dirt of a cut log reaches the alarm threshold, alone and at the daily low of the sway. */
export function dirtForecast(view: Viewed, dailyLow: number): ForecastTruth | null {
  const effect = view.beam.effects.find((one): one is Dirt => one.effect === 'dirt');
  if (!effect || view.scene.scenario.kind !== 'truncated' || view.beam.gainControl) return null;
  const { time, clock } = view.scene;
  const end = time[time.length - 1] as number;
  const course = dirtCourse(effect, dirtPlace(view.scene), end + 1500 * day);
  const threshold = view.beam.alarmThreshold / 100;
  if (course.at(end) >= threshold) return null;
  const model =
    effect.most !== undefined
      ? 'saturating'
      : effect.workDaysOnly
        ? 'weekday'
        : effect.bursts > 0
          ? 'bursts'
          : 'linear';
  const on = (share: number) => {
    const instant = course.reaches(share, end);
    return Number.isNaN(instant) ? null : new Date(clock.wall(instant)).toISOString().slice(0, 10);
  };
  const date = on(threshold);
  // At the daily low the sway takes its share of what the dirt leaves.
  const withLow = dailyLow > 0.002 ? on(1 - (1 - threshold) / (1 - dailyLow)) : null;
  return {
    obscuration: view.beam.alarmThreshold,
    date,
    ...(withLow ? { dateWithDailyLow: withLow } : {}),
    ...(date === null ? { never: true } : {}),
    model,
  };
}
