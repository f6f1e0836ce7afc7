import { minute, rowAt } from '../../columns/index.js';
import { weekday } from '../clock.js';
import { random } from '../random.js';
import type { Scene } from '../scene.js';
import type { Part, Window } from './part.js';

/** Dust, steam or exhaust from work: ragged puffs in working hours. */
export interface Aerosol {
  readonly effect: 'aerosol';
  /** Beams in one hall share the work (one stream) and get their own share of its dust. */
  readonly stream: string;
  /** Loss at the deepest of an ordinary working day [dB]. */
  readonly depth: number;
  /** Spread from one day to the next (log-normal). */
  readonly uneven: number;
  /** Share of the shifts on which the work is done, 0 to 1. */
  readonly active: number;
  /** Puffs on such a day, about. */
  readonly puffs: number;
  /** How fast a puff comes, as a rule [min]. */
  readonly rises: number;
  /** How fast it goes [min]. */
  readonly clears: number;
  /** Spread of the haze within a puff, as a share of it. */
  readonly ragged: number;
  /** Part of the shift in which the work is done: from and to, as shares of it. */
  readonly hours: readonly [number, number];
  /** Days of the week with the work, 0 for Sunday; left out: every shift. */
  readonly weekdays?: readonly number[];
  /** Days with the work, first and last instant [ms]; left out: the whole log. */
  readonly season?: readonly [number, number];
}

/** What the work's aerosol does to a beam. */
export function aerosol(plan: Aerosol, scene: Scene): Part<Aerosol> {
  const { time, seed } = scene;
  const loss = new Float32Array(time.length);
  const windows: Window[] = [];
  const [first, last] = plan.season ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const shift of scene.shifts) {
    if (shift.from < first || shift.to > last) continue;
    if (plan.weekdays && !plan.weekdays.includes(weekday(shift.day))) continue;
    const draw = random(seed, plan.stream, shift.day);
    if (!draw.chance(plan.active)) continue;
    const length = shift.to - shift.from;
    const [opens, closes] = [shift.from + plan.hours[0] * length, shift.from + plan.hours[1] * length];
    const work = puffs(plan, draw, opens, closes);
    windows.push({ from: opens, to: closes + 6 * plan.clears * minute });
    for (const puff of work) {
      const until = puff.from + 7 * (puff.rises + puff.clears);
      for (let i = rowAt(time, puff.from); i < time.length && (time[i] as number) < until; i++) {
        const age = (time[i] as number) - puff.from;
        loss[i] = (loss[i] as number) + puff.size * (1 - Math.exp(-age / puff.rises)) * Math.exp(-age / puff.clears);
      }
    }
  }
  const draw = random(seed, plan.stream, 'haze');
  let haze = 0;
  for (let i = 0; i < time.length; i++) {
    const interval = (time[i] as number) - (time[i - 1] ?? 0);
    const keep = Math.exp(-interval / 25_000);
    haze = keep * haze + Math.sqrt(1 - keep * keep) * draw.normal();
    loss[i] = (loss[i] as number) * Math.max(0, 1 + plan.ragged * haze);
  }
  return { effect: plan, cause: 'process-aerosol', windows, loss };
}

interface Puff {
  readonly from: number;
  readonly size: number;
  readonly rises: number;
  readonly clears: number;
}

/** The puffs of a day, scaled so that an ordinary day's deepest comes to `depth`. */
function puffs(plan: Aerosol, draw: ReturnType<typeof random>, opens: number, closes: number): Puff[] {
  const count = Math.max(1, Math.round(plan.puffs * draw.between(0.5, 1.5)));
  const today = Math.exp(plan.uneven * draw.normal());
  const work: Puff[] = [];
  for (let k = 0; k < count; k++) {
    const rises = Math.max(0.1, plan.rises * Math.exp(0.5 * draw.normal())) * minute;
    const clears = Math.max(0.5, plan.clears * Math.exp(0.5 * draw.normal())) * minute;
    // The first puff comes as work begins: people start at the bell.
    const from = k === 0 ? opens + draw.between(0, 10) * minute : draw.between(opens, closes);
    work.push({ from, rises, clears, size: Math.exp(0.5 * draw.normal()) });
  }
  const deepest = Math.max(...work.map((puff) => peak(work, puff)));
  return work.map((puff) => ({ ...puff, size: (puff.size * plan.depth * today) / deepest }));
}

/** What all puffs of a day together come to at the crest of one of them. */
function peak(work: readonly Puff[], { from, rises, clears }: Puff): number {
  const crest = from + rises * Math.log(1 + clears / rises);
  let sum = 0;
  for (const puff of work) {
    const age = crest - puff.from;
    if (age > 0) sum += puff.size * (1 - Math.exp(-age / puff.rises)) * Math.exp(-age / puff.clears);
  }
  return sum;
}
