import { second } from '../../columns/index.js';
import type { Cause, Claim } from '../cause.js';
import { leastSamples, leastTime } from '../held.js';
import type { Picture } from '../picture.js';
import { evidence, spell } from '../wording.js';

/** Samples missing, or the very same value held. */
export const dataGap: Cause = {
  word: 'data-gap',
  meaning: 'samples missing or stuck',
  shows: 'no samples, or the very same value held',
  otherBeams: 'show it too',
  action: 'Check the logger, its clock, its supply and its cable. Nothing is known of the beam for that time.',
  settles: "The logger's own record and the supply's: was it running then?",
  claims: (picture) => [...missing(picture), ...held(picture)],
};

function missing({ view }: Picture): Claim[] {
  const { time, until } = view.trace;
  const claims: Claim[] = [];
  for (let i = nextPause(time, until, 1); i < time.length; i = nextPause(time, until, i + 1)) {
    const start = until[i - 1] as number;
    const end = time[i] as number;
    const length = end - start;
    const lost = length / view.interval - 1;
    if (lost < leastSamples - 0.5) continue;
    claims.push({
      start,
      end,
      confidence: 0.98,
      severity: 'note',
      summary: `No samples for ${spell(length)}: nothing is known of the beam.`,
      evidence: [evidence('length', length / second, 's'), evidence('samples missing', Math.round(lost), '')],
    });
  }
  return claims;
}

/** First row from `from` on that begins so long after the one before that it may be a gap; their number where none does. */
function nextPause(time: Float64Array, until: Float64Array, from: number): number {
  let row = from;
  while (row < time.length && (time[row] as number) - (until[row - 1] as number) < leastTime) row++;
  return row;
}

/** Score where the whole log is one value, a possibility: nothing in it shows what the scale holds by itself. Own choice. */
const neverMoved = 0.03;

/** Runs of one value, longer than this beam's noise and scale could give by chance. */
function held({ view, held: runs }: Picture): Claim[] {
  const { time, until } = view.trace;
  return runs.map(({ from, to, samples, usual }) => {
    const start = time[from] as number;
    const end = until[to] as number;
    return {
      start,
      end,
      confidence: to - from + 1 === time.length ? neverMoved : samples > 6 * usual ? 0.95 : 0.6,
      severity: 'note' as const,
      summary: `The very same value is held for ${spell(end - start)}, as a stuck reading is.`,
      evidence: [
        evidence('samples of one value', samples, ''),
        evidence('length', (end - start) / second, 's'),
        evidence('longest usual run of one value', usual, ''),
      ],
    };
  });
}
