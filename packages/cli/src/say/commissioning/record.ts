import type { CommissioningRecord } from 'beamkeep/commissioning';
import type { Look } from '../look.js';
import { plain, plainly } from '../plain.js';
import { table } from '../table.js';
import { wrap } from '../wrap.js';

/** A record for people, at a glance; the whole of it is in the files. */
export function recordText(record: CommissioningRecord, written: readonly string[], { width, colours }: Look): string {
  const { site, date, beams, attention, missing } = plainly(record);
  const points = (list: CommissioningRecord['attention']) =>
    list.map(({ beam, words }) => wrap(beam === null ? words : `${beam}: ${words}`, width, '  - ', '    ')).join('\n');
  return `${[
    `${colours.strong(site.name)}  commissioning record of ${date}`,
    table(
      [
        ['beam', 'aim', 'covered test', 'proof'].map(colours.faint),
        ...beams.map(({ id, aim, covered, proof }) => [
          id,
          aim?.verdict ?? 'not scanned',
          covered?.verdict ?? 'not covered',
          proof?.verdict ?? 'not proved',
        ]),
      ],
      '  ',
    ),
    attention.length === 0
      ? 'Nothing failed, and nothing wants looking at.'
      : `Look at this before the hand-over\n${points(attention)}`,
    missing.length === 0 ? 'Nothing is missing.' : `Missing in this record\n${points(missing)}`,
    written.length === 0
      ? 'Nothing was written: name --page and --out for that.'
      : `Written: ${plain(written.join(', '))}`,
  ].join('\n\n')}\n`;
}
