import { day } from '../../columns/index.js';
import { median, quantile } from '../../statistics/index.js';
import type { Cause, Claim } from '../cause.js';
import type { Picture } from '../picture.js';
import { spells } from '../spells.js';
import { swings } from '../swings.js';
import { counted, evidence, logistic, percent } from '../wording.js';
import { aimEvidence } from './aimEvidence.js';
import { daysOf } from './recurring.js';

/** The structure moves with heat, wind or load, and the aim with it. */
export const buildingMovement: Cause = {
  word: 'building-movement',
  meaning: 'the structure moves with heat, wind or load',
  shows:
    'a sway that repeats with the day, or with load, and follows temperature; one dip a cycle, or two when centred',
  otherBeams: 'show it too',
  action: 'Re-aim to the middle of the movement, at the hour when the level stands halfway, or stiffen the mount.',
  settles: 'Read the aim at the daily low and at the daily high: if the peak has moved, the structure moves.',
  claims: (picture) => {
    const sway = swayClaims(picture);
    return sway.length > 0 ? sway : loadClaims(picture);
  },
};

/** Share of the least change that counts which a day must be seen to swing: medians of hours cut off the crests. Own choice. */
const seen = 0.9;

function swayClaims(picture: Picture): Claim[] {
  const { slowLimit, view } = picture;
  const daily = swings(picture);
  if (daily.length === 0) return [];
  const swaying = daily.filter((d) => d.swing >= seen * slowLimit);
  if (swaying.length < 3 || swaying.length < 0.1 * daily.length) return [];
  const { heat } = picture;
  const typical = median(swaying.map((d) => d.swing));
  const large = quantile(
    daily.map((d) => d.swing),
    0.9,
  );
  const fit = median(swaying.map((d) => d.explained));
  const follows = heat === undefined ? 0 : 3 * (heat.explained - 0.4);
  const confidence = Math.min(
    0.98,
    logistic(
      2 * (Math.min(3, large / slowLimit) - 1) + 8 * (fit - 0.55) + 0.25 * Math.min(8, swaying.length - 3) + follows,
    ),
  );
  if (confidence < 0.1) return [];
  return spells(swaying.map((d) => [d.start, d.end] as const)).map((spell) => ({
    start: spell.start,
    end: spell.end,
    episodes: spell.episodes,
    confidence,
    severity:
      1 - picture.view.beam.alarmThreshold / 100 > 1 - 2 * large && spell.end >= view.to - 2 * day ? 'watch' : 'note',
    summary: `The level sways by ${percent(typical)} % on ${counted(spell.episodes.length, 'day')}, trough to crest, as a structure that moves.`,
    evidence: [
      evidence('swing of a day, median', percent(typical), '%'),
      evidence('swing of a large day', percent(large), '%'),
      evidence('days that swing', spell.episodes.length, ''),
      evidence('share of the day that the cycle explains', fit, ''),
      ...aimEvidence(heat, view.beam),
    ],
  }));
}

/** A structure that gives way under a load: the same shallow step and back at working hours, on many days. */
function loadClaims(picture: Picture): Claim[] {
  const loaded = daysOf(picture, 'load');
  const days = picture.days.filter((d) => loaded.has(d.number));
  if (days.length < 3 || days.length < 0.1 * picture.days.length) return [];
  const depth = median([...loaded.values()].map((of) => Math.max(...of.map((e) => e.bottom))));
  const all = [...loaded.values()].flat();
  const [there, back] = all.filter(({ sign }) => sign === 1).length * 2 >= all.length ? ['down', 'up'] : ['up', 'down'];
  const confidence = 0.95 * logistic(0.8 * (days.length - 5)) * logistic(3.5 * (depth / picture.slowLimit - 1.2));
  return spells(days.map((d) => [d.start, d.end] as const)).map((spell) => ({
    start: spell.start,
    end: spell.end,
    episodes: spell.episodes,
    confidence,
    severity: 'note' as const,
    summary: `The level steps ${there} by ${percent(depth)} % and ${back} again on ${counted(spell.episodes.length, 'day')}, flat between, as a structure under a load.`,
    evidence: [
      evidence('depth of the step, median', percent(depth), '%'),
      evidence('days with such steps', spell.episodes.length, ''),
    ],
    action:
      'Find what loads the structure at these hours (a crane, a lift, a door), and fix the beam to what does not give way.',
    settles: 'Move the load while somebody watches the level: if it follows, the structure gives way.',
  }));
}
