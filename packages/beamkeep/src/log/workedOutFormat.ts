import { strToU8 } from 'fflate';
import type { TimeFormat } from '../site/index.js';
import { timeReader } from './civilTime.js';

/** What the time cells of a log's first lines say about their format. */
export type FormatFound =
  | { readonly format: TimeFormat /** Whether a time without an offset was seen. */; readonly local: boolean }
  /** `both`: day-first and month-first fit; `neither`: no known format fits the text. */
  | { readonly trouble: 'both' | 'neither'; readonly text: string };

/** Unix times between 1973 and 5138 as seconds, and from 1973 on as milliseconds. */
const leastSeconds = 1e8;
const leastMilliseconds = 1e11;
const mostMilliseconds = 1e14;

const numeric = /^\d+(?:[.,]\d+)?$/;

/**
 * Works out how times are written.
 *
 * @param texts time cells of the first lines; some may be broken
 * @param comma whether a comma can mark decimals
 */
export function workedOutFormat(texts: readonly string[], comma: boolean): FormatFound {
  const fits = (format: TimeFormat, text: string): boolean => {
    const bytes = strToU8(text);
    const reader = timeReader(format, comma);
    const found = reader.read(bytes, 0) && reader.end === bytes.length;
    local ||= found && reader.local;
    return found;
  };
  const votes = new Map<TimeFormat, number>();
  let local = false;
  let either = '';
  for (const text of texts) {
    let format: TimeFormat | undefined;
    if (numeric.test(text)) {
      const value = Number.parseFloat(text);
      if (value >= leastMilliseconds && value < mostMilliseconds) format = 'unix-milliseconds';
      else if (value >= leastSeconds && value < leastMilliseconds) format = 'unix-seconds';
    } else if (fits('iso', text)) format = 'iso';
    else {
      const dayFirst = fits('day-first', text);
      const monthFirst = fits('month-first', text);
      if (dayFirst && monthFirst) either ||= text;
      else if (dayFirst) format = 'day-first';
      else if (monthFirst) format = 'month-first';
    }
    if (format !== undefined) votes.set(format, (votes.get(format) ?? 0) + 1);
  }
  const best = [...votes].sort((a, b) => b[1] - a[1])[0];
  if (best !== undefined) return { format: best[0], local: local && !best[0].startsWith('unix') };
  return either === '' ? { trouble: 'neither', text: texts[0] ?? '' } : { trouble: 'both', text: either };
}
