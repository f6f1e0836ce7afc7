import { day, hour } from '../../columns/index.js';
import type { Cause, Claim } from '../cause.js';
import type { Picture } from '../picture.js';
import { levelOf, lossOf } from '../view.js';
import { evidence, logistic, percent, spell } from '../wording.js';
import { swayAround } from './swayAround.js';

/** Knocked or slipped: the aim changed at once. */
export const misalignmentStep: Cause = {
  word: 'misalignment-step',
  meaning: 'knocked or slipped: the aim changed at once',
  shows: 'a sudden partial loss that stays, often swaying more after',
  otherBeams: 'tell nothing',
  action: 'Find what was knocked or came loose, fix it, re-aim to the peak and prove fire and fault again.',
  settles: 'Re-aim: if the level returns, it was a knock. If it does not, look for an object in the edge of the path.',
  claims: (picture) => {
    const { view, parts, excursions, kind } = picture;
    const { time, until } = view.trace;
    const steps = parts.steps.flatMap((s, k): Standing[] => {
      if (s.loss <= 0) return [];
      // It holds until light comes back at once: re-aiming, or the object that it may have been is taken away.
      const back = parts.steps.slice(k + 1).find((next) => next.loss < -0.4 * s.loss);
      const before = Math.max(0, s.row - 1);
      const lost = levelOf((view.loss[before] as number) - (parts.left[before] as number)) * (1 - levelOf(s.loss));
      const end = back === undefined ? view.to : (until[back.row - 1] as number);
      return [{ start: time[s.row] as number, end, lost, loss: s.loss, stays: back === undefined }];
    });
    // What fell and stands for hours only, to the end of the log or until it is put right, is no new level.
    const standing = excursions
      .filter((e) => kind.get(e) === 'knock' && !steps.some((s) => s.start <= e.end && s.end >= e.start))
      .map(
        (e): Standing => ({
          start: e.start,
          end: e.open ? view.to : e.end,
          lost: e.bottom,
          loss: lossOf(1 - e.bottom),
          stays: e.open,
        }),
      );
    return [...steps, ...standing].flatMap((s) => claim(picture, s));
  },
};

/** A level that fell at once and stood. */
interface Standing {
  readonly start: number;
  readonly end: number;
  /** Share of clean air, and [dB]. */
  readonly lost: number;
  readonly loss: number;
  /** Whether it stands to the end of the log. */
  readonly stays: boolean;
}

function claim(picture: Picture, { start, end, lost, loss, stays }: Standing): Claim[] {
  const sway = swayAround(picture, start);
  const deep = lost > 0.75;
  const renormalised = picture.visits.some((v) => v.work === 'renormalised' && Math.abs(start - v.time) < 6 * hour);
  const confidence =
    logistic(5 * (lost / picture.slowLimit - 0.8) + (Number.isNaN(sway) ? 0 : Math.max(0, 2 * Math.log2(sway)))) *
    (renormalised ? 0.1 : deep ? 0.2 : 0.95);
  if (confidence < 0.1) return [];
  return [
    {
      start,
      end,
      confidence,
      severity: stays ? (lost > 0.1 ? 'act' : 'watch') : 'note',
      summary: `The level fell by ${percent(lost)} % at once and stayed for ${spell(end - start)}${stays ? ', to the end of the log' : ''}: the aim was changed.`,
      evidence: [
        evidence('step down, as a share of clean air', percent(lost), '%'),
        evidence('step down, in decibels', loss, 'dB'),
        ...(Number.isNaN(sway) ? [] : [evidence('daily sway after over before', sway, 'times')]),
        evidence('held for', (end - start) / day, 'days'),
      ],
    },
  ];
}
