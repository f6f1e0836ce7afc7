import { converted } from './converted.js';
import { decibelsToPercent, percentToDecibels } from './reading.js';
import { refuseUnlessPositive } from './refuse.js';

/**
 * What the same smoke would hide over a path of another length.
 *
 * @param percent obscuration measured [%], 0 to 100
 * @param measuredMetres path over which it was measured [m], more than 0
 * @param wantedMetres path for which it is wanted [m], more than 0
 * @returns obscuration [%], 0 to 100; NaN in, NaN out
 * @throws UsageError for a percentage outside 0 to 100 or a path that is not more than 0
 *
 * Of an instrument that sends its light there and back the path is twice the distance.
 * Source: 40 CFR 86.884-14(a), revision of 1 July 2003: N = 100 (1 - (1 - N/100)^(wanted/measured)).
 * @example overPath(20, 0.1016, 0.127) // 24.34
 */
export function overPath(percent: number, measuredMetres: number, wantedMetres: number): number {
  refuseUnlessPositive('measured path', measuredMetres, 'm');
  refuseUnlessPositive('wanted path', wantedMetres, 'm');
  const loss = percentToDecibels(converted(percent, 'percent', 'percent')); // refuses what is not smoke
  return measuredMetres === wantedMetres ? percent : decibelsToPercent((loss * wantedMetres) / measuredMetres);
}
