import { clockTolerance } from './clockOffset.js';
import type { PanelClock } from './joinEvents.js';
import { lengthInWords, plural } from './wording.js';

/** How far the panel's clock stands from the log's and how that is known, in sentences. */
export function clockWords({ offset, source, matched, of, spread, estimate, intervalSeconds }: PanelClock): string {
  if (offset === undefined) {
    const near =
      of === 0
        ? 'no signal of the list has one of its kind near it in the log'
        : `${matched} of ${of} fit as they stand`;
    return `The panel's clock cannot be told from the log's (${near}): its times are taken as the log's. Where the difference is known, give it.`;
  }
  const agree = `${matched} of ${plural(of, 'signal')} that both may have seen ${matched === 1 ? 'agrees' : 'agree'} with it`;
  const within = matched > 1 ? `, within ${lengthInWords(spread)} of each other` : '';
  const coarse =
    source === 'estimated' && intervalSeconds >= 10
      ? ` Samples stand ${lengthInWords(1000 * intervalSeconds)} apart: it may be up to so much more.`
      : '';
  const other =
    source === 'given' && estimate !== undefined && Math.abs(estimate.offset - offset) > clockTolerance(intervalSeconds)
      ? ` The log itself speaks for another: ${distance(estimate.offset)}, with ${estimate.matched} of ${plural(estimate.of, 'signal')}.`
      : '';
  return `The panel's clock ${distance(offset)} (${source}): ${agree}${within}.${coarse}${other}`;
}

const distance = (offset: number): string => {
  const whole = Math.round(offset / 1000);
  if (whole === 0) return "goes with the log's";
  const far = Math.abs(whole) < 600 ? `${Math.abs(whole)} s` : lengthInWords(1000 * Math.abs(whole));
  return `runs ${far} ${whole > 0 ? 'ahead of' : 'behind'} the log's`;
};
