import type { FindingJson } from 'beamkeep';
import type { CauseWord, Evidence } from 'beamkeep/diagnosis';
import { meaningOf } from './meaningOf.js';
import { figure, plural } from './numbers.js';
import type { Palette } from './palette.js';
import { sureness } from './sureness.js';
import { type Clock, length, stretch } from './times.js';
import { wrap } from './wrap.js';

const when = ({ start, end, ongoing }: FindingJson, told: Clock): string =>
  stretch(told, Date.parse(start), Date.parse(end), ongoing);

/** Characters for a cause in a table. */
const causeWidth = 36;

/** The row of a finding in the table of its beam. */
export const findingRow = (finding: FindingJson, told: Clock, colours: Palette): string[] => [
  colours[finding.severity](finding.severity),
  when(finding, told),
  wrap(meaningOf(finding.cause), causeWidth),
  `${Math.round(finding.confidence * 100)} %`,
];

const sentence = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);

/** A number with its unit, not to be parted at the end of a line; long times in days, hours and minutes. */
function measured({ measure, value, unit }: Evidence): string {
  const amount = unit === 's' && value >= 120 ? length(value * 1000) : `${figure(value)} ${unit}`;
  return `${measure} ${amount.trimEnd().replaceAll(' ', '\u00a0')}`;
}

/** What a finding rests on: numbers with units, visits, how often it came. */
function grounds({ evidence, episodes, during }: FindingJson): string {
  return [
    ...evidence.map(measured),
    ...(episodes === undefined ? [] : [`came ${plural(episodes.length, 'time')}`]),
    ...(during === undefined ? [] : [`while the beam was ${during}`]),
  ].join('; ');
}

/**
 * The findings of one cause in sentences: each with its summary and its evidence, then what to do and what would
 * settle it, said once where it is the same for all.
 */
export function causeText(
  cause: CauseWord,
  findings: readonly FindingJson[],
  told: Clock,
  colours: Palette,
  width: number,
): string {
  const severity = findings[0]?.severity ?? 'note';
  const paragraph = (head: string, text: string) => wrap(`${head} ${sentence(text)}`, width, '    ', '      ');
  const advice = ({ action, settles }: FindingJson) => `${action}\n${settles}`;
  const lines = [`  ${colours[severity](cause)} (${meaningOf(cause)})`];
  findings.forEach((finding, at) => {
    const next = findings[at + 1];
    lines.push(paragraph(`${when(finding, told)}, ${sureness(finding)}:`, finding.summary));
    const found = grounds(finding);
    if (found !== '') lines.push(wrap(found, width, '      ', '      '));
    if (next !== undefined && advice(next) === advice(finding)) return;
    lines.push(paragraph('What to do:', finding.action), paragraph('What settles it:', finding.settles));
  });
  return lines.join('\n');
}
