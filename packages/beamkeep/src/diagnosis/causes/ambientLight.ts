import { median } from '../../statistics/index.js';
import type { Cause } from '../cause.js';
import { solarHour } from '../families.js';
import { spells } from '../spells.js';
import { clockTime, evidence, logistic, percent } from '../wording.js';
import { daysOf, episodesOf } from './recurring.js';

/** Sun or lamps on the receiver: light that adds, at an hour that moves with the season. */
export const ambientLight: Cause = {
  word: 'ambient-light',
  meaning: 'sun or lamps on the receiver',
  shows: 'level raised, lowered (saturation) or roughened at a solar hour that moves with the season',
  action: 'Shade the receiver, or turn or move it so that no window, lamp or reflection lies in its view.',
  settles: 'Shade the window at that hour on a clear day: if the level keeps its course, it was the sun.',
  claims: (picture) => {
    const days = daysOf(picture, 'light');
    if (days.size < 2) return [];
    const all = [...days.values()].flat();
    const up = all.filter((e) => e.sign === -1);
    const depth = median([...days.values()].map((of) => Math.max(...of.map((e) => e.depth))));
    const at = all.map((e) => solarHour(picture.view, (e.start + e.end) / 2));
    const hour = median(at);
    const apart = median(at.map((h) => Math.abs(h - hour)));
    const confidence = Math.min(
      0.96,
      logistic(1 * (days.size - 2.5) + 1.5 * (depth / picture.slowLimit - 1.3) + 1.5 * (1.5 - apart)),
    );
    if (confidence < 0.1) return [];
    return spells(episodesOf(days.values())).map((s) => ({
      start: s.start,
      end: s.end,
      episodes: s.episodes,
      confidence,
      severity: 'note' as const,
      summary: `The level is ${up.length * 2 >= all.length ? 'raised' : 'lowered'} by ${percent(depth)} % about ${clockTime(hour)} solar time on ${s.episodes.length} days: light from outside falls on the receiver.`,
      evidence: [
        evidence('change, median of the days', percent(depth), '%'),
        evidence('solar time', hour, 'h'),
        evidence('spread of the solar time', apart, 'h'),
        evidence('days', s.episodes.length, ''),
        evidence('share of raised levels', up.length / all.length, ''),
      ],
    }));
  },
};
