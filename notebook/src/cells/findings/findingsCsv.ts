import type { Reading } from '../../bench/reading.js';
import { csvCell } from '../../parts/csvCell.js';
import type { VerdictOnFinding } from '../../sheet/sheet.js';
import { verdictKey } from './verdictKey.js';

const columns = [
  'number',
  'beam',
  'cause',
  'severity',
  'confidence',
  'start',
  'end',
  'ongoing',
  'summary',
  'evidence',
  'action',
  'settles',
  'on site',
  'note',
] as const;

/**
 * The findings as CSV (RFC 4180), one line each, times in UTC; no cell of it is a formula (`csvCell`).
 */
export function findingsCsv({ beams }: Reading, verdicts: Readonly<Record<string, VerdictOnFinding>>): string {
  const lines = beams
    .flatMap(({ findings }) => findings)
    .map((finding) => {
      const key = verdictKey(finding);
      const said = Object.hasOwn(verdicts, key) ? verdicts[key] : undefined;
      return [
        finding.number,
        finding.beam,
        finding.cause,
        finding.severity,
        finding.confidence,
        new Date(finding.start).toISOString(),
        new Date(finding.end).toISOString(),
        finding.ongoing,
        finding.summary,
        finding.evidence.map(({ measure, value, unit }) => `${measure} ${value} ${unit}`).join('; '),
        finding.action,
        finding.settles,
        said ? [said.verdict, said.cause].filter(Boolean).join(': ') : '',
        said?.note ?? '',
      ]
        .map(csvCell)
        .join(',');
    });
  return `${[columns.join(','), ...lines].join('\r\n')}\r\n`;
}
