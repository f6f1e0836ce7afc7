import { rowAt } from '../../columns/index.js';
import type { Window } from '../effects/part.js';
import type { CauseWord } from './causeWord.js';
import { type Labels, noLabels } from './labels.js';
import { type Came, labelSpells } from './spells.js';
import type { CouldBeSmoke, LabelledCause } from './truthFile.js';
import { brief, isoAt, partsOf, type Viewed } from './viewed.js';

/** How a recurring cause is asked for. */
interface Rule {
  readonly cause: CauseWord;
  /** Limit on the effect [share of clean air]. */
  readonly limit: number;
  /** Times that make a spell. */
  readonly least: number;
  readonly unit: string;
  /** Whether a part of the effect may be a gain of level. */
  readonly bothSigns: boolean;
  readonly more?: Partial<LabelledCause>;
}

/** Mist, dust or light: each window in which the effect passes its limit is a time that it came. */
export function recurring(view: Viewed, rule: Rule): Labels {
  const parts = partsOf(view, rule.cause);
  const labels = noLabels();
  if (parts.length === 0) return labels;
  const taken = view.light.taken(parts);
  const windows = merged(parts.flatMap((part) => part.windows));
  const came: Came[] = [];
  let [weak, weakMost] = [0, 0];
  for (const window of windows) {
    const found = extent(view, taken, window, rule);
    if (!found) continue;
    if (found.strong) came.push(found);
    else {
      weak += 1;
      weakMost = Math.max(weakMost, Math.abs(found.size));
    }
    labels.couldBeSmoke.push(...pastAlarm(view, taken, window, rule.cause));
  }
  const { causes, traces } = labelSpells(rule.cause, came, rule.least, rule.unit, rule.more);
  labels.causes.push(...causes);
  labels.traces.push(...traces);
  if (weak > 0 || causes.length === 0) {
    const near = weakMost >= 0.5 * rule.limit;
    labels.traces.push({
      cause: rule.cause,
      magnitude: brief(100 * weakMost),
      unit: rule.unit,
      why: 'times too weak to be asked for',
      near,
    });
  }
  return labels;
}

/** Where within a window the effect shows: from the first to the last sample beyond half the limit. */
function extent(
  { scene: { time }, seen }: Viewed,
  taken: Float64Array,
  { from, to }: Window,
  rule: Rule,
): (Came & { strong: boolean }) | undefined {
  let [most, strongRows] = [0, 0];
  const [begin, end] = [rowAt(time, from), rowAt(time, to + 1)];
  const size = (i: number) => (rule.bothSigns ? Math.abs(taken[i] as number) : (taken[i] as number));
  for (let i = begin; i < end; i++) {
    if (seen[i] === 0) continue;
    if (size(i) > Math.abs(most)) most = taken[i] as number;
    if (size(i) >= rule.limit) strongRows += 1;
  }
  const visible = Math.max(0.5 * rule.limit, 0.1 * Math.abs(most));
  let [first, last] = [-1, -1];
  for (let i = begin; i < end; i++) {
    if (seen[i] === 0 || size(i) < visible) continue;
    if (first < 0) first = i;
    last = i;
  }
  if (first < 0) return undefined;
  return {
    from: time[first] as number,
    to: time[last] as number,
    size: rule.bothSigns ? -most : most,
    strong: strongRows >= 2,
  };
}

/** Stretches in which the beam stands beyond its alarm threshold, mostly by this cause. */
function pastAlarm(view: Viewed, taken: Float64Array, { from, to }: Window, cause: CauseWord): CouldBeSmoke[] {
  if (cause !== 'process-aerosol' && cause !== 'condensation') return [];
  const {
    scene: { time },
    seen,
    light,
    beam,
  } = view;
  const found: CouldBeSmoke[] = [];
  const [begin, end] = [rowAt(time, from), rowAt(time, to + 1)];
  const past = (i: number) => {
    const lost = 1 - (light.level[i] as number);
    return seen[i] === 1 && 100 * lost >= beam.alarmThreshold && (taken[i] as number) >= 0.3 * lost;
  };
  for (let i = begin; i < end; i++) {
    if (!past(i)) continue;
    // The whole swell: back to where it rose from, on to where it is gone.
    let [first, last, most] = [i, i, 0];
    const foot = 0.15 * (taken[i] as number);
    while (first > begin && (taken[first - 1] as number) > foot) first--;
    while (last + 1 < end && (taken[last + 1] as number) > foot) last++;
    for (let k = first; k <= last; k++) most = Math.max(most, 1 - (light.level[k] as number));
    found.push({ cause, start: isoAt(view, first), end: isoAt(view, last), magnitude: brief(100 * most) });
    i = last;
  }
  return found;
}

/** Windows in order, overlapping ones joined. */
export function merged(windows: readonly Window[]): Window[] {
  const found: Window[] = [];
  for (const window of [...windows].sort((a, b) => a.from - b.from)) {
    const before = found[found.length - 1];
    if (before && window.from <= before.to)
      found[found.length - 1] = { from: before.from, to: Math.max(before.to, window.to) };
    else found.push(window);
  }
  return found;
}
