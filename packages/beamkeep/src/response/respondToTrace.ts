import type { Stretch, Trace } from '../columns/index.js';
import type { Beam, Sampling, Visit } from '../site/index.js';
import { type BeamResponder, beamResponder } from './beamResponder.js';
import { clearBelow, reached } from './blockWatch.js';
import { equipmentView } from './equipmentObscuration.js';
import { resetsOf } from './resetsOf.js';
import type { Change } from './responder.js';

/** What a beam's equipment did over a condensed log. */
export interface TraceResponse {
  /** The state at the first sample, then every change. */
  readonly changes: readonly Change[];
  /**
   * Every loss that leads to a fire signal: from the first sample at or past the alarm threshold to the last before
   * the loss fell below it, whether or not a latched signal stood already.
   */
  readonly fires: readonly Stretch[];
}

/**
 * What a beam's equipment did over its condensed log, and the stretches that it took for smoke.
 *
 * @param trace of the beam
 * @param beam of the site, with the clean-air reading that the log told
 * @param visits of the site
 * @param intervalSeconds usual interval between samples [s]
 * @param sampling of the site
 *
 * A row of several samples counts as samples at its level from its first to its last instant. So changes are dated to
 * the sample in minutes that keep their samples, and to an even spacing in the others.
 */
export function respondToTrace(
  trace: Trace,
  beam: Beam,
  visits: readonly Visit[],
  intervalSeconds: number,
  sampling: Sampling = 'regular',
): TraceResponse {
  const changes: Change[] = [];
  const fires: Stretch[] = [];
  let open = Number.NaN;
  let last = Number.NaN;
  const settled = beamResponder(beam, { sampling, intervalSeconds, resets: resetsOf(visits, beam.id) }, (change) =>
    changes.push(change),
  );
  const unlatched = { ...beam, latching: false, hysteresis: 0 };
  const smoke = beamResponder(unlatched, { sampling, intervalSeconds, resets: [] }, ({ state, since }) => {
    if (state === 'fire') open = since;
    else if (!Number.isNaN(open)) close();
  });
  const close = () => {
    fires.push({ start: open, end: last });
    open = Number.NaN;
  };
  const seen = equipmentView(beam);
  const { alarmThreshold, faultThreshold, hysteresis } = beam;
  const clear = Math.min(clearBelow(alarmThreshold), Math.min(alarmThreshold, faultThreshold) - hysteresis);
  const feed = (row: number) => {
    const obscuration = seen(trace.level[row] as number);
    feedRow(settled, trace, row, obscuration);
    feedRow(smoke, trace, row, obscuration);
    last = trace.until[row] as number;
  };
  const idle = () => settled.due() === Number.POSITIVE_INFINITY && smoke.due() === Number.POSITIVE_INFINITY;
  for (let row = 0; row < trace.time.length; row++) {
    feed(row);
    if (!idle()) continue;
    // Of clear rows that follow each other with nothing under way, only the first and the last can matter.
    const end = clearUntil(trace.level, row, seen, clear);
    if (end > row + 1) {
      row = end - 1;
      feed(row);
    }
  }
  settled.advance(last);
  smoke.advance(last);
  if (!Number.isNaN(open)) close();
  return { changes, fires };
}

/** First row from `from` on whose obscuration is not below a threshold. */
function clearUntil(level: Float64Array, from: number, seen: (level: number) => number, threshold: number): number {
  let row = from;
  while (row < level.length && !reached(seen(level[row] as number), threshold)) row++;
  return row;
}

/** Feeds one row: its first sample, those at which a delay may be over, and its last. */
function feedRow(response: BeamResponder, { time, until, count }: Trace, row: number, obscuration: number): void {
  const first = time[row] as number;
  const end = until[row] as number;
  response.feed(first, obscuration);
  if (end === first) return;
  const spacing = (end - first) / Math.max((count[row] as number) - 1, 1);
  let at = first;
  for (let due = response.due(); due < end; due = response.due()) {
    at = Math.max(first + Math.ceil((due - first) / spacing) * spacing, at + spacing);
    if (at >= end) break;
    response.feed(at, obscuration, true);
  }
  response.feed(end, obscuration, true);
}
