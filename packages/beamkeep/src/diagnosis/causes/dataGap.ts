import { minute, rowAt, second } from '../../columns/index.js';
import type { Cause, Claim } from '../cause.js';
import type { Picture } from '../picture.js';
import { evidence, spell } from '../wording.js';

/** A gap is told from this many samples and this long. */
const leastSamples = 30;
const leastTime = 5 * minute;

/** Samples missing, or the very same value held. */
export const dataGap: Cause = {
  word: 'data-gap',
  meaning: 'samples missing or stuck',
  shows: 'no samples, or the very same value held',
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

/** Runs of one value, longer than this beam's noise and scale could give by chance. */
function held({ view }: Picture): Claim[] {
  const { time, until, level, low, high, count } = view.trace;
  const n = level.length;
  const lengths = new Float64Array(n);
  const long: { from: number; to: number; samples: number }[] = [];
  let runs = 0;
  for (let i = 0; i < n; ) {
    let j = i;
    let samples = low[i] === high[i] ? (count[i] as number) : 1;
    while (j + 1 < n && level[j + 1] === level[i] && low[j + 1] === high[j + 1]) {
      if ((time[j + 1] as number) - (until[j] as number) > leastTime + leastSamples * view.interval) break;
      j++;
      samples += count[j] as number;
    }
    lengths[runs++] = samples;
    if (samples >= leastSamples && (until[j] as number) - (time[i] as number) >= leastTime) {
      long.push({ from: i, to: j, samples });
    }
    i = j + 1;
  }
  if (long.length === 0) return [];
  const rising = lengths.subarray(0, runs).sort();
  return long.flatMap((run) => {
    const start = time[run.from] as number;
    const end = until[run.to] as number;
    // The longest runs of other values show what the scale holds by itself.
    const shorter = rowAt(rising, run.samples);
    const usual = shorter === 0 ? 1 : (rising[Math.max(0, shorter - 5)] as number);
    if (run.samples < 3 * usual) return [];
    return [
      {
        start,
        end,
        confidence: run.samples > 6 * usual ? 0.95 : 0.6,
        severity: 'note' as const,
        summary: `The very same value is held for ${spell(end - start)}: the reading is stuck, not the light.`,
        evidence: [
          evidence('samples of one value', run.samples, ''),
          evidence('length', (end - start) / second, 's'),
          evidence('longest usual run of one value', usual, ''),
        ],
      },
    ];
  });
}
