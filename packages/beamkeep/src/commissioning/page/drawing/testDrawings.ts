import type { CoveredJson } from '../../answers/coveredAnswer.js';
import type { ProofJson } from '../../answers/proofAnswer.js';
import type { SettingsOut } from '../../record/commissioningRecord.js';
import { wallTime } from '../../words/wallTime.js';
import type { Markup } from '../markup.js';
import { chart, type Point } from './chart.js';

/** Seconds from the start of a trace to an instant. */
const secondsAfter = (start: string, instant: string): number => (Date.parse(instant) - Date.parse(start)) / 1000;

const pointsOf = ({ seconds, values }: CoveredJson['trace'], factor: number): Point[] =>
  seconds.map((second, row) => [second, factor * (values[row] ?? Number.NaN)]);

/** A covered test: the reading over time, and the stretches that were used. */
export function coveredDrawing({ beam, trace, before, covered, after }: CoveredJson, timeZone: string): Markup {
  const used = [
    { stretch: before, label: 'clean' },
    { stretch: covered, label: 'covered' },
    { stretch: after, label: 'clean' },
  ];
  return chart({
    title: `Covered test of beam ${beam}: reading over time`,
    xLabel: `seconds after ${wallTime(trace.start, timeZone)}`,
    yLabel: '% of the clean reading',
    series: [{ kind: 'line', points: pointsOf(trace, 100) }],
    stretches: used.flatMap(({ stretch, label }) =>
      stretch === null || stretch.from === null || stretch.to === null
        ? []
        : [{ from: secondsAfter(trace.start, stretch.from), to: secondsAfter(trace.start, stretch.to), label }],
    ),
    yRange: [0, 105],
  });
}

/** A proof: obscuration over time, the thresholds, and where each step begins. */
export function proofDrawing(
  { beam, trace, steps }: ProofJson,
  { alarmThreshold, faultThreshold }: Pick<SettingsOut, 'alarmThreshold' | 'faultThreshold'>,
  timeZone: string,
): Markup {
  return chart({
    title: `Proof of beam ${beam}: obscuration as the equipment sees it, over time`,
    xLabel: `seconds after ${wallTime(trace.start, timeZone)}; numbers above: steps`,
    yLabel: 'obscuration [%]',
    series: [{ kind: 'line', points: pointsOf(trace, 1) }],
    levels: [
      { y: alarmThreshold, label: `alarm ${alarmThreshold} %` },
      { y: faultThreshold, label: `fault ${faultThreshold} %` },
    ],
    places: steps.flatMap(({ start }, row) =>
      start === null ? [] : [{ x: secondsAfter(trace.start, start), label: String(row + 1) }],
    ),
    yRange: [0, 100],
  });
}
