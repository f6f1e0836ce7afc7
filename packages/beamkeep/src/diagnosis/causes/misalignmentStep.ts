import { day } from '../../columns/index.js';
import type { Cause } from '../cause.js';
import { levelOf } from '../view.js';
import { evidence, logistic, percent, spell } from '../wording.js';
import { swayAround } from './swayAround.js';

/** Knocked or slipped: the aim changed at once. */
export const misalignmentStep: Cause = {
  word: 'misalignment-step',
  meaning: 'knocked or slipped: the aim changed at once',
  shows: 'a sudden partial loss that stays, often swaying more after',
  action: 'Find what was knocked or came loose, fix it, re-aim to the peak and prove fire and fault again.',
  settles: 'Re-aim: if the level returns, it was a knock. If it does not, look for an object in the edge of the path.',
  claims: (picture) => {
    const { parts, view, slowLimit } = picture;
    const { time, until } = view.trace;
    return parts.steps.flatMap((s, k) => {
      if (s.loss <= 0) return [];
      const start = time[s.row] as number;
      // It holds until light comes back at once: re-aiming, or the object that it may have been is taken away.
      const back = parts.steps.slice(k + 1).find((next) => next.loss < -0.4 * s.loss);
      const end = back === undefined ? view.to : (until[back.row - 1] as number);
      const lost =
        levelOf((view.loss[Math.max(0, s.row - 1)] as number) - (parts.left[Math.max(0, s.row - 1)] as number)) *
        (1 - levelOf(s.loss));
      const sway = swayAround(picture, start);
      const deep = lost > 0.75;
      const confidence =
        logistic(5 * (lost / slowLimit - 0.8) + (Number.isNaN(sway) ? 0 : Math.max(0, 2 * Math.log2(sway)))) *
        (deep ? 0.2 : 0.95);
      if (confidence < 0.1) return [];
      return [
        {
          start,
          end,
          confidence,
          severity: back === undefined ? (lost > 0.1 ? 'act' : 'watch') : 'note',
          summary: `The level fell by ${percent(lost)} % at once and stayed for ${spell(end - start)}${back === undefined ? ', to the end of the log' : ''}: the aim was changed.`,
          evidence: [
            evidence('step down', percent(lost), '%'),
            evidence('step down', s.loss, 'dB'),
            ...(Number.isNaN(sway) ? [] : [evidence('daily sway after over before', sway, 'times')]),
            evidence('held for', (end - start) / day, 'days'),
          ],
        },
      ];
    });
  },
};
