import { blockedWithin } from '../../numbers/index.js';
import type { Beam } from '../../site/index.js';
import type { Excursion, Excursions } from './excursions.js';
import { type ExpectedStep, takesLight } from './expected.js';
import { lossTaken } from './lossTaken.js';
import { matched } from './matched.js';

/** What leaving a step, or a stay away from clean air, unpaired costs; a perfect pair costs 0, a hopeless one 3. */
const unpaired = { row: 2, column: 1 };

/**
 * Which stay away from clean air each step is.
 *
 * @param expected the steps
 * @param found the stays of the log
 * @param times when the steps were done, as written down [ms]; NaN where nothing was
 */
export function steppedThrough(
  expected: readonly ExpectedStep[],
  found: Excursions,
  beam: Beam,
  times: readonly number[],
): (Excursion | undefined)[] {
  const taking = expected.flatMap(({ step }, row) => (takesLight(step) ? [row] : []));
  const pairs = matched(
    taking.length,
    found.list.length,
    (row, column) =>
      misfit(expected[taking[row] as number] as ExpectedStep, found.list[column] as Excursion, found, beam) +
      lateness(times[taking[row] as number] as number, found.list[column] as Excursion),
    unpaired,
  );
  const own = new Map(taking.map((row, at) => [row, pairs[at] === undefined ? undefined : found.list[pairs[at]]]));
  let last: Excursion | undefined;
  return expected.map(({ step }, row) => {
    if (takesLight(step)) last = own.get(row);
    return step.do === 'uncover' || takesLight(step) ? last : undefined;
  });
}

function misfit({ step, obscuration }: ExpectedStep, excursion: Excursion, found: Excursions, beam: Beam): number {
  if (obscuration) {
    const off = Math.abs(lossTaken(excursion, found, beam) - obscuration.value);
    return Math.min(off / (2 * (obscuration.high - obscuration.value || 1)), 2.5);
  }
  const fast = excursion.riseSeconds <= blockedWithin.value;
  const deep = excursion.largest >= beam.faultThreshold;
  if (step.do === 'cover-at-once') return (fast ? 0 : 0.6) + (deep ? 0 : 0.8);
  return (fast ? 0.6 : 0) + (excursion.largest >= beam.alarmThreshold ? 0 : 0.8) + (deep ? 0 : 0.2);
}

const lateness = (time: number, { start }: Excursion): number =>
  Number.isNaN(time) ? 0 : Math.min(Math.abs(start - time) / 60_000, 2);
