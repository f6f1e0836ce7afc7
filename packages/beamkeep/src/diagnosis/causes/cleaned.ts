import { hour } from '../../columns/index.js';
import type { Visit } from '../../site/index.js';
import { quantile } from '../../statistics/index.js';
import type { Cause, Claim } from '../cause.js';
import type { Picture } from '../picture.js';
import { cellOfStep } from '../steps.js';
import { levelOf, lossOf } from '../view.js';
import { evidence, logistic, percent } from '../wording.js';

/** Loss removed by work in one step, and kept. */
export const cleaned: Cause = {
  word: 'cleaned',
  meaning: 'loss removed by work (cleaning, re-aiming, rain) in one step, and kept',
  shows: 'a step up that stays; not an object leaving, mist drying, a gain step or a re-normalised reading',
  otherBeams: 'tell nothing',
  action: 'Note what was done and by whom, and take the new level as the mark to compare with.',
  settles: 'The log book: a visit at that hour, or rain on an outdoor reflector.',
  claims: (picture) => [...stepsUp(picture), ...putRight(picture)],
};

function stepsUp({ parts, view, visits, slowLimit }: Picture): Claim[] {
  return parts.steps
    .filter((s) => s.loss < 0)
    .flatMap((s, k, ups) => {
      const at = view.trace.time[s.row] as number;
      const before = levelOf(lossBefore(view.loss, s.row));
      const gained = before * (levelOf(s.loss) - 1);
      const visit = visitAt(visits, at);
      // Above the clearest that the beam ever was, by more than a sway may be: a gain step, not a cleaning.
      const clearest = Math.max(
        1,
        quantile(parts.cells.level.subarray(0, cellOfStep(parts.cells, view.trace.time, s)), 0.98) || 0,
      );
      // But a re-aiming after a knock may find a better peak than there ever was, and what was lost comes back with more.
      const last = ups[k - 1]?.row ?? 0;
      const knocked = parts.steps.some((other) => other.loss > 0 && other.row >= last && other.row < s.row);
      const allowed = 0.04 + comesWithMore * Math.max(0, clearest - before);
      const over = visit !== undefined || knocked ? 0 : Math.max(0, before + gained - clearest - allowed);
      const confidence = isRenormalised(visits, at)
        ? 0.1
        : standsClear(gained, slowLimit, visit) * 2 * logistic(-80 * over);
      return confidence < 0.1 ? [] : [claim(at, confidence, gained, -s.loss, visit)];
    });
}

/** Knocks that were put right within the day. */
function putRight({ excursions, kind, parts, view, visits, slowLimit }: Picture): Claim[] {
  const { time } = view.trace;
  return excursions.flatMap((e) => {
    const row = e.to + 1;
    if (kind.get(e) !== 'knock' || row >= time.length) return [];
    if (parts.steps.some((s) => s.loss < 0 && s.row >= e.from && s.row <= row + 1)) return [];
    const at = time[row] as number;
    const visit = visitAt(visits, at);
    const confidence = isRenormalised(visits, at) ? 0.1 : standsClear(e.bottom, slowLimit, visit);
    return [claim(at, confidence, e.bottom, lossOf(1 - e.bottom), visit)];
  });
}

/** The visit that explains a step up. */
const visitAt = (visits: readonly Visit[], at: number): Visit | undefined =>
  visits.find(
    (v) =>
      (v.work === 'cleaned' || v.work === 'realigned') &&
      at >= v.time - 3 * hour &&
      at <= (v.until ?? v.time) + 6 * hour,
  );

/** Whether the reading was set anew about that time: the equipment made the step, not the light. */
const isRenormalised = (visits: readonly Visit[], at: number): boolean =>
  visits.some((v) => v.work === 'renormalised' && Math.abs(at - v.time) < 6 * hour);

const standsClear = (gained: number, slowLimit: number, visit: Visit | undefined): number =>
  logistic(5 * (gained / slowLimit - 0.8) + (visit === undefined ? 0 : 3));

const claim = (at: number, confidence: number, gained: number, decibels: number, visit: Visit | undefined): Claim => ({
  start: at,
  end: at,
  confidence: Math.min(0.98, confidence),
  severity: 'note',
  summary: `The level stepped up by ${percent(gained)} % and stayed${visit === undefined ? '' : `: the visit (${visit.work}) explains it`}.`,
  evidence: [
    evidence('step up, as a share of clean air', percent(gained), '%'),
    evidence('step up, in decibels', decibels, 'dB'),
  ],
});

/** How much more than was lost may come back, as a share of the loss: own choice. */
const comesWithMore = 0.5;

/** Loss just before a step [dB]. */
function lossBefore(loss: Float64Array, row: number): number {
  const from = Math.max(0, row - 12);
  let sum = 0;
  for (let i = from; i < row; i++) sum += loss[i] as number;
  return row > from ? sum / (row - from) : (loss[row] as number);
}
