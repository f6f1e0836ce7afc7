import { day } from '../../columns/index.js';
import type { Cause, Claim } from '../cause.js';
import type { Picture } from '../picture.js';
import { type SlowStretch, slowStretches } from '../slowLoss.js';
import { levelOf } from '../view.js';
import { evidence, logistic, percent, round } from '../wording.js';
import { driftEvidence } from './driftEvidence.js';

/** Dirt on the reflector or the optics: a slow loss that cleaning takes back. */
export const contamination: Cause = {
  word: 'contamination',
  meaning: 'dirt on the reflector or the optics',
  shows: 'slow loss over days to months; steps back up when cleaned',
  otherBeams: 'doubt it if clean',
  action: 'Clean the reflector and the optics with the system out of service, then compare the level with clean air.',
  settles:
    'Clean both ends: if the level steps back up by about the loss that was gained, it was dirt; if not, check the aim.',
  claims: (picture) => slowStretches(picture).flatMap((s) => claim(picture, s)),
};

/** Shortest stretch in which a loss is taken for dirt [ms]: what goes within two days is another thing. Common practice, no source. */
const shortest = 2 * day;

function claim(picture: Picture, s: SlowStretch): Claim[] {
  const ratio = s.gainedShare / picture.slowLimit;
  const sure = s.gained / Math.max(s.noise, 1e-4);
  if (ratio < 0.7 || s.steadiness < 0.25 || s.end - s.start < shortest) return [];
  const drift = driftEvidence(picture, s);
  const grown = logistic(9 * (ratio - 0.95)) * logistic(1.5 * (sure - 3.5)) * logistic(8 * (s.steadiness - 0.35));
  const confidence = Math.min(0.97, grown) * (1 - drift);
  if (confidence < 0.05) return [];
  const days = (s.end - s.start) / day;
  const rate = percent(s.gainedShare) / Math.max(days, 1e-9);
  const now = 1 - levelOf(s.loss[s.loss.length - 1] as number);
  const margin = picture.view.beam.alarmThreshold / 100 - now;
  const restored = s.restored ? ` ${percent(1 - levelOf(s.restoredBy))} % came back in one step at the end.` : '';
  return [
    {
      start: s.start,
      end: s.end,
      confidence,
      severity: s.restored ? 'note' : margin < 0 ? 'act' : now > 0.02 || ratio > 1.5 ? 'watch' : 'note',
      summary: `Slow loss of ${percent(s.gainedShare)} % over ${Math.round(days)} days, as dirt builds up.${restored}`,
      evidence: [
        evidence('slope', -rate, '%/day'),
        evidence('growth of the loss, as a share of clean air', percent(s.gainedShare), '%'),
        evidence('growth of the loss, in decibels', s.gained, 'dB'),
        evidence('steadiness of the growth, -1 to 1', s.steadiness, ''),
        ...(Number.isNaN(s.acceleration)
          ? []
          : [evidence('quickening of the growth, 0 for a straight line', s.acceleration, '')]),
        ...(Number.isNaN(s.swayGrowth) ? [] : [evidence('growth of the daily sway in dB', s.swayGrowth, 'times')]),
      ],
      settles: `Clean both ends: if the level steps back up by about ${round(percent(s.gainedShare), 2)} %, it was dirt; if it does not, check the aim.`,
    },
  ];
}
