import { day, minute } from '../../columns/index.js';
import type { Excursion } from '../excursions.js';
import { hoursBetween, solarHour } from '../families.js';
import type { Picture } from '../picture.js';
import { logistic } from '../wording.js';

/*
 * How likely a growth is smoke. It is told as smoke at any likelihood: this only says how sure that is. Three signs part
 * smoke from what grows like it: it takes much of the light, it hangs, and it does not come at hours at which the beam
 * dips on other days as well. A puff of dust, a gust of mist and a shake of the mount are slight, soon gone, or one of many.
 */

/** What is measured of a stretch in which loss grew. */
export interface SmokeSigns {
  /** Greatest loss, share of clean air. */
  readonly lost: number;
  /** Time in which it cleared from four fifths to a sixth [ms]; a day where it took longer or never did. */
  readonly clearing: number;
  /** Dips about the same solar hour on other days. */
  readonly dipsAtThatHour: number;
}

/** Distance in the hour of the day within which another dip comes at the same hours [h]. Own choice. */
const sameHours = 3;

/** Signs of a stretch whose greatest loss is known. */
export function smokeSigns({ view, excursions }: Picture, start: number, end: number, lost: number): SmokeSigns {
  const middle = (start + end) / 2;
  const at = solarHour(view, middle);
  let deepest: Excursion | undefined;
  let dipsAtThatHour = 0;
  for (const e of excursions) {
    if (e.sign !== 1) continue;
    if (e.end >= start && e.start <= end && e.depth > (deepest?.depth ?? 0)) deepest = e;
    const other = (e.start + e.end) / 2;
    if (Math.abs(other - middle) > day / 2 && hoursBetween(solarHour(view, other), at) < sameHours) dipsAtThatHour++;
  }
  return { lost, clearing: Math.min(day, (deepest?.recovery ?? 0) + view.interval), dipsAtThatHour };
}

/** Loss and time to clear of a lone growth that is smoke as often as not. Own choice: the weighing does the rest. */
const even = { lost: 0.15, clearing: 30 * minute };

/**
 * How likely smoke is by its signs, 0 to 1: the odds grow with the loss and with the root of the time that it took to
 * clear, and are shared with the dips at that hour. Own choice.
 */
export const smokeLikelihood = ({ lost, clearing, dipsAtThatHour }: SmokeSigns): number =>
  logistic(
    Math.log(Math.max(lost, 0.01) / even.lost) + Math.log(clearing / even.clearing) / 2 - Math.log(1 + dipsAtThatHour),
  );
