import type { Cause } from '../cause.js';
import { spells } from '../spells.js';
import { clockTime, counted, evidence, percent } from '../wording.js';
import { episodesOf } from './recurring.js';
import { sunlit } from './sunlit.js';

const secondsOfHour = 3600;

/** Sun or lamps on the receiver: light that adds, at an hour that moves with the season. */
export const ambientLight: Cause = {
  word: 'ambient-light',
  meaning: 'sun or lamps on the receiver',
  shows: 'level raised, lowered (saturation) or roughened at a solar hour that moves with the season',
  otherBeams: 'show it too',
  action: 'Shade the receiver, or turn or move it so that no window, lamp or reflection lies in its view.',
  settles: 'Shade the window at that hour on a clear day: if the level keeps its course, it was the sun.',
  claims: (picture) => {
    const light = sunlit(picture);
    if (!light || light.confidence < 0.1) return [];
    const { days, hour, depth, returns, share, confidence } = light;
    const all = days.flat();
    const raised = all.filter(({ sign }) => sign < 0).length / all.length;
    return spells(episodesOf(days)).map((s) => ({
      start: s.start,
      end: s.end,
      episodes: s.episodes,
      confidence,
      severity: 'note' as const,
      summary: `The level is ${raised >= 0.5 ? 'raised' : 'lowered'} by ${percent(depth)} % about ${clockTime(hour)} solar time on ${counted(s.episodes.length, 'day')}: light from outside falls on the receiver.`,
      evidence: [
        evidence('change, median of the days', percent(depth), '%'),
        evidence('solar time', hour, 'h'),
        ...(returns === undefined ? [] : [evidence('comes back within', returns * secondsOfHour, 's')]),
        evidence('days', s.episodes.length, ''),
        evidence('share of them about this hour', share, ''),
        evidence('share of raised levels', raised, ''),
      ],
    }));
  },
};
