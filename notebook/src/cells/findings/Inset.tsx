import { day } from 'beamkeep/columns';
import { useCallback, useMemo } from 'preact/hooks';
import type { NumberedFinding, Window } from '../../bench/reading.js';
import { scaledThreshold } from '../../bench/scaled.js';
import { siteDates } from '../../words/dates.js';
import { figure } from '../../words/numbers.js';
import { around } from '../signal/moveWindow.js';
import { useLine } from '../signal/useLine.js';
import { type OpenLog, wholeOf } from '../useLog.js';

const width = 360;
const height = 84;
const buckets = 240;

/** The finding's own stretch of the log as a small picture beside its words. */
export function Inset({ log, finding }: { log: OpenLog; finding: NumberedFinding }) {
  const { bench, reading } = log;
  const whole = wholeOf(reading);
  const window = useMemo(() => around(finding, whole) ?? whole, [finding, whole.from, whole.to]);
  const ask = useCallback((to: Window) => bench.level(finding.beam, to, buckets, 'obscuration'), [bench, finding.beam]);
  const line = useLine(ask, window).shown?.line;
  const alarm = reading.site.beams.find(({ id }) => id === finding.beam)?.alarmThreshold ?? Number.NaN;
  const picture = useMemo(() => line && drawn(line.time, line.value, window), [line, window]);
  const dates = siteDates(reading.site.timeZone);
  const across = (instant: number): number => ((instant - window.from) / (window.to - window.from)) * width;
  const end = window.to - window.from > 4 * day ? dates.date : dates.moment;
  const spans = finding.episodes ?? [[finding.start, finding.end] as const];
  const threshold = picture?.down(scaledThreshold(alarm, 'obscuration')) ?? Number.NaN;

  return (
    <figure class="inset">
      <svg
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={`Obscuration of ${finding.beam} about this finding, from ${picture?.low ?? ''} to ${picture?.high ?? ''} %.`}
      >
        {spans.map(([start, end]) => (
          <rect
            key={start}
            class="inset-span"
            x={across(start)}
            y={0}
            width={Math.max(1.5, across(end) - across(start))}
            height={height}
          />
        ))}
        {threshold > 0 && threshold < height && (
          <line class="inset-alarm" x1={0} x2={width} y1={threshold} y2={threshold} />
        )}
        {picture && <path class="inset-line" d={picture.path} />}
      </svg>
      <figcaption>
        <span>{end(window.from)}</span>
        <span>{picture ? `${picture.low} to ${picture.high} %` : ''}</span>
        <span>{end(window.to)}</span>
      </figcaption>
    </figure>
  );
}

interface Drawn {
  readonly path: string;
  readonly low: string;
  readonly high: string;
  /** Where a value stands, from the top. */
  down(value: number): number;
}

/** The path of a line; it breaks where a value is missing. */
function drawn(time: Float64Array, value: Float64Array, { from, to }: Window): Drawn {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const one of value) {
    if (one < low) low = one;
    if (one > high) high = one;
  }
  const span = Math.max(high - low, 0.5);
  const down = (one: number): number => height - 4 - ((one - low) / span) * (height - 8);
  let path = '';
  let pen = 'M';
  value.forEach((one, i) => {
    if (Number.isNaN(one)) {
      pen = 'M';
      return;
    }
    const across = (((time[i] as number) - from) / (to - from)) * width;
    path += `${pen}${across.toFixed(1)} ${down(one).toFixed(1)}`;
    pen = 'L';
  });
  return { path, low: figure(low), high: figure(high), down };
}
