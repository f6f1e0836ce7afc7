import { UsageError } from '../columns/index.js';
import { quoted, type Site, type TimeFormat } from '../site/index.js';
import type { LogHead } from './head.js';
import type { NoteBook } from './inputNotes.js';
import { timePlace } from './timePlace.js';
import { workedOutFormat } from './workedOutFormat.js';

/** Names of the formats, as notes say them. */
const inWords: Readonly<Record<TimeFormat, string>> = {
  iso: 'ISO 8601',
  'unix-seconds': 'Unix seconds',
  'unix-milliseconds': 'Unix milliseconds',
  'day-first': 'day before month',
  'month-first': 'month before day',
};

/** Time cells of the first lines; joined where time stands in two. */
const timeTexts = ({ lines }: LogHead, { time, clock }: { readonly time: number; readonly clock: number }): string[] =>
  lines
    .map((cells) => (clock < 0 ? (cells[time] ?? '') : `${cells[time]} ${cells[clock]}`))
    .filter((text) => text.trim() !== '');

/** Whether the lines of a head can be read with the day first and with the month first. */
export function isUndecided(head: LogHead, site: Site): boolean {
  if (site.timeFormat !== undefined) return false;
  const found = workedOutFormat(timeTexts(head, timePlace(head, site)), head.separator !== ',');
  return 'trouble' in found && found.trouble === 'both';
}

/**
 * How the times of each file are written: as the site says, or as its first lines tell.
 *
 * @throws UsageError where they do not tell; day and month are never guessed
 */
export function timeFormats(heads: readonly LogHead[], site: Site, notes: NoteBook): TimeFormat[] {
  let told = '';
  return heads.map((head) => {
    const { format, what } = timeFormatOf(head, site);
    if (what !== undefined && what !== told) {
      notes.note(head.file, head.headerLine + 1, what);
      told = what;
    }
    return format;
  });
}

/** The format of one file, and what was worked out, in words. */
function timeFormatOf(head: LogHead, site: Site): { readonly format: TimeFormat; readonly what?: string } {
  const place = timePlace(head, site);
  const texts = timeTexts(head, place);
  const at = `${head.file}:${head.headerLine + 1}`;
  if (head.lines.length === 0) throw new UsageError(`${at}: ${head.firstTrouble}`);
  refuseSplitTime(head, place, texts, at);
  if (site.timeFormat !== undefined) return { format: site.timeFormat };
  const found = workedOutFormat(texts, head.separator !== ',');
  if ('format' in found) {
    const zone = found.local ? ` without an offset, on clocks of ${site.timeZone}` : '';
    return { format: found.format, what: `times were taken for ${inWords[found.format]}${zone}` };
  }
  const column = quoted(head.names[place.time]);
  if (found.trouble === 'both') {
    throw new UsageError(
      `${at}: ${quoted(found.text)} in column ${column} can be day first or month first: set "timeFormat" to "day-first" or "month-first" in the site file`,
    );
  }
  throw new UsageError(
    `${at}: ${quoted(found.text)} in column ${column} is not a time in a known format: set "timeColumn" or "timeFormat" in the site file`,
  );
}

const dateAlone = /^\d{1,4}[-/.]\d{1,2}[-/.]\d{1,4}$/;
const clockAlone = /^\d{1,2}:\d{2}/;

/** A date in one column and the time of day in the next, and the site says nothing of the second. */
function refuseSplitTime(
  { names, lines }: LogHead,
  { time, clock }: { readonly time: number; readonly clock: number },
  texts: readonly string[],
  at: string,
): void {
  if (clock >= 0 || texts.length === 0 || !texts.every((text) => dateAlone.test(text))) return;
  const other = names.findIndex(
    (_, cell) => cell !== time && lines.every((cells) => clockAlone.test(cells[cell] ?? '')),
  );
  if (other < 0) return;
  throw new UsageError(
    `${at}: the time stands in two columns: set "timeColumn" to [${quoted(names[time])}, ${quoted(names[other])}] in the site file`,
  );
}
