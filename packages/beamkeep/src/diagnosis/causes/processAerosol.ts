import { hour } from '../../columns/index.js';
import { median } from '../../statistics/index.js';
import type { Cause } from '../cause.js';
import { spells } from '../spells.js';
import { clockTime, counted, evidence, logistic, percent } from '../wording.js';
import { agreement, daysOf, episodesOf, recent } from './recurring.js';

/** Dust, steam or exhaust from work: ragged partial dips in working hours. */
export const processAerosol: Cause = {
  word: 'process-aerosol',
  meaning: 'dust, steam or exhaust from work',
  shows: 'partial dips in working hours, repeated on working days, ragged',
  action:
    'Find the work that goes on at these hours; extract its dust or steam, or move the beam. Do not raise the threshold to be rid of it.',
  settles: 'Stop that work for a day, or watch one: if the dips go with the work, it is the cause.',
  claims: (picture) => {
    const days = daysOf(picture, 'dust');
    if (days.size < 2) return [];
    const all = [...days.values()].flat();
    const depth = median([...days.values()].map((of) => Math.max(...of.map((e) => e.depth))));
    const hours = all.map((e) => picture.view.clock.hourOfDay((e.start + e.end) / 2));
    const first = Math.min(...hours);
    const last = Math.max(...hours);
    const perDay = all.length / days.size;
    const kept = agreement(hours);
    const confidence =
      0.97 *
      logistic(1.2 * (days.size - 2.2)) *
      logistic(4 * (depth / picture.slowLimit - 1.2)) *
      logistic(12 * (kept - 0.4));
    if (confidence < 0.1) return [];
    return spells(episodesOf(days.values())).map((s) => ({
      start: s.start,
      end: s.end,
      episodes: s.episodes,
      confidence,
      severity: recent(picture, s.end, 14) && depth * 100 > picture.view.beam.alarmThreshold / 2 ? 'watch' : 'note',
      summary: `Ragged dips of ${percent(depth)} % between ${clockTime(first)} and ${clockTime(last)} on ${counted(s.episodes.length, 'day')}, as dust or steam from work.`,
      evidence: [
        evidence('deepest of a day, median', percent(depth), '%'),
        evidence('dips a day', perDay, ''),
        evidence('days', s.episodes.length, ''),
        evidence('agreement of the hours, 0 to 1', kept, ''),
        evidence('length of a dip, median', median(all.map((e) => e.end - e.start)) / hour, 'h'),
      ],
    }));
  },
};
