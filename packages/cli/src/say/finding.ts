import type { CauseWord, ToldFinding } from '../answers.js';
import { causeNames } from './causeNames.js';
import { figure, plural } from './numbers.js';
import type { Palette } from './palette.js';
import { sureness } from './sureness.js';
import { type Clock, stretch } from './times.js';
import { wrap } from './wrap.js';

const when = ({ start, end, ongoing }: ToldFinding, told: Clock): string =>
  stretch(told, Date.parse(start), Date.parse(end), ongoing);

/** The row of a finding in the table of its beam. */
export const findingRow = (finding: ToldFinding, told: Clock, colours: Palette): string[] => [
  colours[finding.severity](finding.severity),
  when(finding, told),
  causeNames[finding.cause],
  `${Math.round(finding.confidence * 100)} %`,
];

const sentence = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);

/** What a finding rests on: numbers with units, visits, how often it came. */
function grounds({ evidence, episodes, during }: ToldFinding): string {
  return [
    ...evidence.map(({ measure, value, unit }) => `${measure} ${figure(value)}${unit === '' ? '' : ` ${unit}`}`),
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
  findings: readonly ToldFinding[],
  told: Clock,
  colours: Palette,
  width: number,
): string {
  const severity = findings[0]?.severity ?? 'note';
  const paragraph = (head: string, text: string) => wrap(`${head} ${sentence(text)}`, width, '    ', '      ');
  const advice = ({ action, settles }: ToldFinding) => `${action}\n${settles}`;
  const lines = [`  ${colours[severity](cause)}: ${causeNames[cause]}`];
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
