import type { FindingJson } from 'beamkeep';
import type { CauseWord, Evidence } from 'beamkeep/diagnosis';
import { meaningOf } from './meaningOf.js';
import { figure, plural } from './numbers.js';
import type { Palette } from './palette.js';
import { explained } from './runnerUp.js';
import { sureness } from './sureness.js';
import { table } from './table.js';
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

/** A number with its unit; long times in days, hours and minutes. */
const amount = ({ value, unit }: Evidence): string =>
  unit === 's' && value >= 120 ? length(value * 1000) : `${figure(value)} ${unit}`.trimEnd();

/** A number with its unit, not to be parted at the end of a line. */
const measured = (evidence: Evidence): string => `${evidence.measure} ${amount(evidence).replaceAll(' ', '\u00a0')}`;

/** What a finding rests on beside its numbers: how often it came, visits. */
const circumstances = ({ episodes, during }: FindingJson): string[] => [
  ...(episodes === undefined ? [] : [`came ${plural(episodes.length, 'time')}`]),
  ...(during === undefined ? [] : [`while the beam was ${during}`]),
];

/** What a finding rests on: numbers with units, how often it came, visits. Number by number where it is explained. */
function grounds(finding: FindingJson, width: number): string[] {
  const indent = '      ';
  const rest = circumstances(finding);
  if (finding.runnerUp !== undefined && finding.evidence.length > 0) {
    const rows = finding.evidence.map((each) => [each.measure, amount(each)]);
    return [table(rows, indent), ...rest.map((each) => `${indent}${each}`)];
  }
  const found = [...finding.evidence.map(measured), ...rest].join('; ');
  return found === '' ? [] : [wrap(found, width, indent, indent)];
}

/**
 * The findings of one cause in sentences: each with its summary and its evidence, then what to do and what would
 * settle it (and what comes second, where that was asked for), said once where it is the same for all.
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
  const advice = ({ action, settles, runnerUp }: FindingJson) => JSON.stringify([action, settles, runnerUp]);
  const lines = [`  ${colours[severity](cause)} (${meaningOf(cause)})`];
  findings.forEach((finding, at) => {
    const next = findings[at + 1];
    lines.push(paragraph(`${when(finding, told)}, ${sureness(finding)}:`, finding.summary));
    lines.push(...grounds(finding, width));
    if (next !== undefined && advice(next) === advice(finding)) return;
    lines.push(
      paragraph('What to do:', finding.action),
      paragraph('What settles it:', finding.settles),
      ...explained(finding, told, width),
    );
  });
  return lines.join('\n');
}
