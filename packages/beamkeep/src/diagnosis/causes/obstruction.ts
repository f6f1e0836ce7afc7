import { hour, second } from '../../columns/index.js';
import type { Cause, Claim } from '../cause.js';
import { standsLong } from '../edges.js';
import type { Excursion } from '../excursions.js';
import type { Picture } from '../picture.js';
import { levelOf } from '../view.js';
import { evidence, logistic, percent, spell } from '../wording.js';
import { isSunlit } from './sunlit.js';

/** An object in the path: fast in, flat, fast out, or lasting until it is removed. */
export const obstruction: Cause = {
  word: 'obstruction',
  meaning: 'an object in the path',
  shows: 'a fast deep loss with a flat bottom and a fast full recovery, or one that lasts until the object is removed',
  otherBeams: 'tell nothing',
  action: 'Keep the path clear: find what stood or passed there at that time, move it or move the beam.',
  settles:
    'The work diary or a camera for that time, and whether anybody aimed the beam as it came back; a hand held in the beam shows the same edges.',
  claims: (picture) => [...blocks(picture), ...leftStanding(picture)],
};

/** Samples that show no bottom beside smoke, and how near to a dip that is [ms]: own choice. */
const fewSamples = 3;
const nearby = hour;
/** Share of the confidence that a glimpse leaves: a possibility. Own choice. */
const glimpsed = 0.6;

/**
 * Whether a dip is too short to show what it is: one sample shows no flat bottom, and a few show none beside smoke, which
 * dithers.
 */
const isGlimpse = ({ excursions, kind }: Picture, e: Excursion): boolean =>
  e.deepSamples <= 1 ||
  (e.deepSamples <= fewSamples &&
    excursions.some(
      (o) => kind.get(o) === 'smoke' && o.start <= e.end + nearby && o.end >= e.start - nearby && o.depth > e.depth / 3,
    ));

/** Share of the light that shows an object as clearly as its standing for hours does. Own choice. */
const standing = 0.2;

function blocks(picture: Picture): Claim[] {
  const claims: Claim[] = [];
  for (const e of picture.excursions) {
    if (picture.kind.get(e) !== 'block' || isSunlit(picture, e)) continue;
    // What stands for hours as even as that is there, however little it takes.
    const clear = standsLong(picture, e) ? Math.max(standing, e.bottom) : e.bottom;
    const confidence =
      Math.min(0.97, logistic(14 * (clear - 0.12) + 1.5 * (0.3 - e.unevenness) + 0.8)) *
      (isGlimpse(picture, e) ? glimpsed : 1);
    const beyond = e.depth * 100 >= picture.view.beam.alarmThreshold;
    claims.push({
      start: e.start,
      end: e.end,
      confidence,
      severity: e.open ? 'act' : beyond ? 'watch' : 'note',
      summary: `Something took ${percent(e.bottom)} % of the light for ${spell(e.end - e.start)} with sharp edges${e.open ? ' and is still there' : ''}.`,
      evidence: [
        evidence('depth', percent(e.bottom), '%'),
        evidence('length', (e.end - e.start) / second, 's'),
        evidence('onset, a sixth to four fifths, no longer than', Math.max(e.onset, 0) / second, 's'),
        ...(e.open ? [] : [evidence('recovery', Math.max(e.recovery, 0) / second, 's')]),
        evidence('unevenness of the bottom over its depth', e.unevenness, ''),
      ],
    });
  }
  return claims;
}

/** A deep step down with no return before the end of the log. */
function leftStanding({ parts, view, excursions, kind }: Picture): Claim[] {
  return parts.steps.flatMap((s, k) => {
    const lost = 1 - levelOf(s.loss);
    if (s.loss <= 0 || lost < 0.5 || parts.steps.slice(k + 1).some((next) => next.loss < -0.4 * s.loss)) return [];
    // What grew to the step did not go at once.
    if (excursions.some((e) => kind.get(e) === 'smoke' && e.from <= s.row && e.to + 2 >= s.row)) return [];
    const start = view.trace.time[s.row] as number;
    return [
      {
        start,
        end: view.to,
        confidence: Math.min(0.93, logistic(12 * (lost - 0.5))),
        severity: 'act',
        summary: `${percent(lost)} % of the light went at once and has not come back: something may stand in the path.`,
        evidence: [evidence('depth', percent(lost), '%'), evidence('length', (view.to - start) / second, 's')],
      },
    ];
  });
}
