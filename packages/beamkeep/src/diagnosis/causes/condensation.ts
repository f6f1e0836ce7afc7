import { hour } from '../../columns/index.js';
import { median } from '../../statistics/index.js';
import type { Cause } from '../cause.js';
import type { Excursion } from '../excursions.js';
import { solarHour } from '../families.js';
import type { Picture } from '../picture.js';
import { isLikeFilm } from '../sorting.js';
import { type Spell, spells } from '../spells.js';
import { swayAt } from '../swayAt.js';
import { clockTime, counted, evidence, logistic, percent } from '../wording.js';
import { agreement, byDay, daysOf, episodesOf, recent } from './recurring.js';

/** Share of the daily swing that mist on a moving beam passes as a rule. Own choice. */
const beyondSway = 0.5;

/**
 * How much the dips look like what the fit of a daily cycle leaves behind, 0 to 3.4 log-odds: rises as large and as long
 * beside them, which mist does not make, or a depth within the swing.
 */
function residue(picture: Picture, dips: readonly Excursion[], depth: number): number {
  const rises = picture.excursions.filter((e) => e.sign === -1 && e.depth > 0.4 * depth && e.end - e.start > hour);
  const sway = median(dips.map((e) => swayAt(picture, e)));
  return 1.2 * Math.min(2, rises.length / dips.length) + (depth < beyondSway * sway ? 1 : 0);
}

/** Nights from the first of a spell to its last: each counts with the day on which it ends. */
function nightsOf({ view }: Picture, { episodes }: Spell): number {
  const days = episodes.map(([start, end]) => view.clock.dayNumber((start + end) / 2));
  return Math.max(...days) - Math.min(...days) + 1;
}

/** Nights from which what may be smoke counts as mist as well: a fire or two is no mist. Own choice. */
const severalNights = 3;

/**
 * The nights of mist: those taken for it, and those that cannot be told from smoke but dip as smoothly for hours about
 * the coldest hours of several nights. The latter are told as smoke as well: this only stands beside it.
 */
function mistyNights(picture: Picture): Map<number, Excursion[]> {
  const film = daysOf(picture, 'film');
  if (film.size === 0) return film;
  const smoke = [...daysOf(picture, 'smoke').values()].flat().filter((e) => isLikeFilm(picture.view, e));
  const both = byDay(
    picture,
    [...[...film.values()].flat(), ...smoke].sort((a, b) => a.start - b.start),
  );
  return both.size >= severalNights ? both : film;
}

/** Mist or dew on the optics: smooth, hours long, about the coldest hours, gone as it warms. */
export const condensation: Cause = {
  word: 'condensation',
  meaning: 'mist or dew on the reflector or the optics',
  shows: 'hours-long dips around the coldest part of the day, smooth, recovering as it warms',
  otherBeams: 'show it too',
  action: 'Dry both ends. If it comes back, keep the optics above the dew point.',
  settles: 'Look at the optics in the coldest hour: a film that dries as the level returns is the cause.',
  claims: (picture) => {
    const nights = mistyNights(picture);
    if (nights.size === 0) return [];
    const all = [...nights.values()].flat();
    const depth = median(all.map((e) => e.depth));
    const length = median(all.map((e) => e.end - e.start)) / hour;
    const at = median(all.map((e) => solarHour(picture.view, (e.start + e.end) / 2 + 12 * hour))) - 12;
    const hours = all.map((e) => solarHour(picture.view, (e.start + e.end) / 2));
    const kept = agreement(hours);
    const confidence =
      0.97 *
      logistic(1.6 * (nights.size - 1.7) - residue(picture, all, depth)) *
      logistic(3.5 * (depth / picture.slowLimit - 1.2)) *
      logistic(12 * (kept - 0.4));
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
        evidence('agreement of the hours, 0 to 1', kept, ''),
        evidence('nights', s.episodes.length, ''),
        evidence('share of nights in the spell', s.episodes.length / nightsOf(picture, s), ''),
      ],
    }));
  },
};
