import { day } from '../../columns/index.js';
import type { Cause } from '../cause.js';
import { slowStretches } from '../slowLoss.js';
import { levelOf } from '../view.js';
import { evidence, logistic, percent } from '../wording.js';
import { driftEvidence } from './driftEvidence.js';

/** The aim creeps away: the loss speeds up and the sway grows with it. */
export const misalignmentDrift: Cause = {
  word: 'misalignment-drift',
  meaning: 'the aim creeps away',
  shows: 'loss that accelerates on the side of the lobe, more sway, no recovery by cleaning',
  otherBeams: 'tell nothing',
  action: 'Check the fixings of both ends, re-aim to the peak and note the level before and after.',
  settles: 'Re-aim: if the level returns without cleaning, it was aim; if it stays, clean both ends.',
  claims: (picture) =>
    slowStretches(picture).flatMap((s) => {
      const ratio = s.gainedShare / picture.slowLimit;
      if (ratio < 0.9 || s.steadiness < 0.25) return [];
      const confidence = Math.min(0.97, logistic(4 * (ratio - 1) + 2)) * driftEvidence(picture, s);
      if (confidence < 0.08) return [];
      const days = (s.end - s.start) / day;
      const now = 1 - levelOf(s.loss[s.loss.length - 1] as number);
      return [
        {
          start: s.start,
          end: s.end,
          confidence,
          severity: s.restored ? 'note' : now > picture.view.beam.alarmThreshold / 100 ? 'act' : 'watch',
          summary: `Loss of ${percent(s.gainedShare)} % over ${Math.round(days)} days that behaves as an aim creeping away.`,
          evidence: [
            evidence('growth of the loss, as a share of clean air', percent(s.gainedShare), '%'),
            ...(Number.isNaN(s.acceleration)
              ? []
              : [evidence('quickening of the growth, 0 for a straight line', s.acceleration, '')]),
            ...(Number.isNaN(s.swayGrowth) ? [] : [evidence('growth of the daily sway in dB', s.swayGrowth, 'times')]),
            ...(Number.isNaN(s.swayFollows)
              ? []
              : [evidence('agreement of sway with loss, -1 to 1', s.swayFollows, '')]),
          ],
        },
      ];
    }),
};
