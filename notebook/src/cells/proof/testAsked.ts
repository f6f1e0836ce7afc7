import type { TestAsked } from '../../bench/proofTold.js';
import { numberIn } from '../../parts/numberIn.js';
import type { Settings } from '../../sheet/sheet.js';

/** By how much the panel's clock runs ahead [s], as typed: 0 where nothing is, NaN where it is no number. */
export const secondsAhead = (typed: string): number => (typed.trim() === '' ? 0 : numberIn(typed));

/** What a proof cell asks of its logged test; null where it has none. A clock that is no number is taken as right. */
export function testAsked(
  { sheet, times, test, events, clockOffset }: Settings['proof'],
  beam: string,
): TestAsked | null {
  const ahead = secondsAhead(clockOffset);
  return test && { beam, sheet, times, test, events, clockOffsetSeconds: Number.isNaN(ahead) ? 0 : ahead };
}
