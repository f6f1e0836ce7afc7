import { refuseUnlessAbove0 } from '../refuse.js';

/**
 * Doubling time of a quantity that grows by the same share again and again, from two readings of it.
 *
 * @param first and `second` readings in one unit, more than 0
 * @param seconds between them [s], more than 0
 * @returns doubling time [s]; negative where it falls, infinite where it stays
 * @throws UsageError for a reading or a time that is not more than 0
 * @example doublingTime(9.46, 44.7, 260) // 116.1
 */
export function doublingTime(first: number, second: number, seconds: number): number {
  refuseUnlessAbove0('first reading', first, '');
  refuseUnlessAbove0('second reading', second, '');
  refuseUnlessAbove0('time between', seconds, 's');
  return seconds / Math.log2(second / first);
}
