import { day, hour } from '../../columns/index.js';
import { median } from '../../statistics/index.js';
import type { Cause } from '../cause.js';
import { solarHour } from '../families.js';
import { spells } from '../spells.js';
import { clockTime, counted, evidence, logistic, percent } from '../wording.js';
import { daysOf, episodesOf, recent } from './recurring.js';

/** Mist or dew on the optics: smooth, hours long, about the coldest hours, gone as it warms. */
export const condensation: Cause = {
  word: 'condensation',
  meaning: 'mist or dew on the reflector or the optics',
  shows: 'hours-long dips around the coldest part of the day, smooth, recovering as it warms',
  action: 'Dry both ends. If it comes back, keep the optics above the dew point.',
  settles: 'Look at the optics in the coldest hour: a film that dries as the level returns is the cause.',
  claims: (picture) => {
    const nights = daysOf(picture, 'film');
    if (nights.size === 0) return [];
    const all = [...nights.values()].flat();
    const depth = median(all.map((e) => e.depth));
    const length = median(all.map((e) => e.end - e.start)) / hour;
    const at = median(all.map((e) => solarHour(picture.view, (e.start + e.end) / 2 + 12 * hour))) - 12;
    const confidence = 0.97 * logistic(1.6 * (nights.size - 1.7)) * logistic(3.5 * (depth / picture.slowLimit - 1.2));
    const episodes = episodesOf(nights.values());
    return spells(episodes).map((s) => ({
      start: s.start,
      end: s.end,
      episodes: s.episodes,
      confidence,
      severity: recent(picture, s.end, 14) && depth * 100 > picture.view.beam.alarmThreshold / 3 ? 'watch' : 'note',
      summary: `Smooth dips of ${percent(depth)} % for some ${Math.round(length)} h about ${clockTime(at)} on ${counted(s.episodes.length, 'night')}, gone as it warms: mist or dew.`,
      evidence: [
        evidence('depth, median', percent(depth), '%'),
        evidence('length, median', length, 'h'),
        evidence('solar time of the middle', (at + 24) % 24, 'h'),
        evidence('nights', s.episodes.length, ''),
        evidence('share of nights in the spell', s.episodes.length / Math.max(1, (s.end - s.start) / day), ''),
      ],
    }));
  },
};
