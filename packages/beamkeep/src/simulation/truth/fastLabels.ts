import { rowAt } from '../../columns/index.js';
import { rank } from '../grid.js';
import { type Labels, noLabels } from './labels.js';
import { type Came, labelSpells } from './spells.js';
import { brief, isoAt, partsOf, type Viewed } from './viewed.js';

/** Objects in the path: each time is a label of its own. */
export function blockLabels(view: Viewed): Labels {
  const labels = noLabels();
  const { time } = view.scene;
  for (const part of partsOf(view, 'obstruction')) {
    const taken = view.light.taken([part]);
    for (const { from, to } of part.windows) {
      const rows = seenRows(view, from, to).filter((i) => (taken[i] as number) > 0.5 * view.fast);
      const [first, last] = [rows[0], rows[rows.length - 1]];
      if (first === undefined || last === undefined) {
        if (from <= (time[time.length - 1] as number))
          labels.traces.push({
            cause: 'obstruction',
            magnitude: null,
            unit: '% depth',
            why: 'between two samples',
            near: false,
          });
        continue;
      }
      const depth = rank(
        rows.map((i) => taken[i] as number),
        0.5,
      );
      if (rows.length >= 2 && depth >= view.fast) {
        labels.causes.push({
          cause: 'obstruction',
          start: isoAt(view, first),
          end: isoAt(view, last),
          magnitude: brief(100 * depth),
          unit: '% depth',
        });
      } else {
        labels.traces.push({
          cause: 'obstruction',
          magnitude: brief(100 * depth),
          unit: '% depth',
          why: 'too short or too shallow',
          near: true,
        });
      }
    }
  }
  return labels;
}

/** Smoke: each fire that takes 3 % with four samples above half its peak. */
export function smokeLabels(view: Viewed): Labels {
  const labels = noLabels();
  const { time } = view.scene;
  for (const part of partsOf(view, 'smoke-like')) {
    const taken = view.light.taken([part]);
    for (const { from, to } of part.windows) {
      const rows = seenRows(view, from, to);
      const most = rows.reduce((max, i) => Math.max(max, taken[i] as number), 0);
      const enough = rows.filter((i) => (taken[i] as number) >= most / 2).length >= 4;
      if (most < Math.max(0.03, view.fast) || !enough) {
        if (rows.length > 0) {
          labels.traces.push({
            cause: 'smoke-like',
            magnitude: brief(100 * most),
            unit: '%',
            why: 'too little or too short a smoke',
            near: true,
          });
        }
        continue;
      }
      const foot = Math.max(view.noise.samplePercent / 100, 0.03 * most);
      const shown = rows.filter((i) => (taken[i] as number) >= foot);
      const [first, last] = [shown[0] as number, shown[shown.length - 1] as number];
      const crest = rows.find((i) => (taken[i] as number) >= 0.9 * most) ?? first;
      labels.causes.push({
        cause: 'smoke-like',
        start: isoAt(view, first),
        end: isoAt(view, last),
        magnitude: brief(100 * most),
        unit: '% obscuration at most',
        growthSeconds: Math.round(((time[crest] as number) - (time[first] as number)) / 1000),
      });
    }
  }
  return labels;
}

/** Vibration: the swing of the samples while plant runs. */
export function vibrationLabels(view: Viewed): Labels {
  const labels = noLabels();
  const parts = partsOf(view, 'vibration');
  const [part] = parts;
  if (part?.effect.effect !== 'vibration') return labels;
  const { frequency } = part.effect;
  const taken = view.light.taken(parts);
  const came: Came[] = [];
  let most = 0;
  for (const { from, to } of part.windows) {
    const rows = seenRows(view, from, to);
    const [first, last] = [rows[0], rows[rows.length - 1]];
    if (first === undefined || last === undefined || rows.length < 16) continue;
    const values = rows.map((i) => taken[i] as number);
    const size = rank(values, 0.98) - rank(values, 0.02);
    most = Math.max(most, size);
    // Under interference as large as itself a vibration is not to be seen.
    if (size >= view.fast && size >= 3 * hum(view, rows))
      came.push({ from: view.scene.time[first] as number, to: view.scene.time[last] as number, size });
  }
  const { jitter } = view.scene.scenario.recording;
  const interval = view.scene.scenario.intervalSeconds;
  // Where the instants scatter by more than a fifth of a turn, an alias is no line any more, only spread.
  const smeared =
    frequency * interval * Math.max(jitter, 1e-9) > 0.2 || frequency * part.effect.wander * interval > 0.1;
  const { causes, traces } = labelSpells('vibration', came, 1, '% trough to crest', {
    hertz: brief(frequency),
    ...(smeared && interval > 0.5 / frequency ? { accepts: ['electrical-noise' as const] } : {}),
  });
  labels.causes.push(...causes);
  labels.traces.push(...traces);
  if (came.length < part.windows.length) {
    labels.traces.push({
      cause: 'vibration',
      magnitude: brief(100 * most),
      unit: '% trough to crest',
      why: 'too little swing',
      near: most >= 0.5 * view.fast,
    });
  }
  return labels;
}

/** Spread of the interference over some rows. */
function hum({ light }: Viewed, rows: readonly number[]): number {
  const parts = light.parts.filter(({ cause }) => cause === 'electrical-noise');
  const squares = rows.reduce((sum, i) => sum + parts.reduce((all, part) => all + (part.light?.[i] ?? 0), 0) ** 2, 0);
  return Math.sqrt(squares / Math.max(1, rows.length));
}

/** Electrical noise: three spreads of what it adds pass the limit, and the spread at least doubles. */
export function noiseLabels(view: Viewed): Labels {
  const labels = noLabels();
  const parts = partsOf(view, 'electrical-noise');
  if (parts.length === 0) return labels;
  const usual = view.noise.samplePercent / 100;
  const came: Came[] = [];
  let most = 0;
  for (const part of parts) {
    for (const { from, to } of part.windows) {
      const rows = seenRows(view, from, to);
      const [first, last] = [rows[0], rows[rows.length - 1]];
      if (first === undefined || last === undefined || rows.length < 8) continue;
      const added = Math.sqrt(rows.reduce((sum, i) => sum + (part.light?.[i] as number) ** 2, 0) / rows.length);
      const times = Math.hypot(added, usual) / usual;
      most = Math.max(most, times);
      const start =
        part.effect.effect === 'electrical-noise' && part.effect.grows ? onset(part.light, rows, usual) : first;
      if (times >= 2 && 3 * added >= Math.max(0.015, view.slow)) {
        came.push({ from: view.scene.time[start] as number, to: view.scene.time[last] as number, size: times / 100 });
      }
    }
  }
  const { causes, traces } = labelSpells('electrical-noise', came, 1, 'times the usual spread');
  labels.causes.push(...causes);
  labels.traces.push(...traces);
  if (causes.length === 0) {
    labels.traces.push({
      cause: 'electrical-noise',
      magnitude: brief(most),
      unit: 'times',
      why: 'too little noise',
      near: most >= 1.5,
    });
  }
  return labels;
}

/** First row from which growing noise has doubled the usual spread. */
function onset(light: Float32Array | undefined, rows: readonly number[], usual: number): number {
  const piece = Math.max(8, Math.floor(rows.length / 40));
  for (let k = 0; k + piece <= rows.length; k += piece) {
    const part = rows.slice(k, k + piece);
    const added = Math.sqrt(part.reduce((sum, i) => sum + (light?.[i] as number) ** 2, 0) / piece);
    if (Math.hypot(added, usual) >= 1.6 * usual) return part[0] as number;
  }
  return rows[0] as number;
}

/** Seen rows within a stretch of time. */
export function seenRows({ scene: { time }, seen }: Viewed, from: number, to: number): number[] {
  const rows: number[] = [];
  for (let i = rowAt(time, from); i < time.length && (time[i] as number) <= to; i++) if (seen[i] === 1) rows.push(i);
  return rows;
}
