import type { Look } from '../say/look.js';
import { meaningOf } from '../say/meaningOf.js';
import { counted, plural } from '../say/numbers.js';
import { plainly } from '../say/plain.js';
import { table } from '../say/table.js';
import { wrap } from '../say/wrap.js';
import type { Visit, Visits } from './visits.js';

const causeWidth = 30;

const row = ({ severity, log, beam, cause, start, ongoing, forecast }: Visit, { colours }: Look): string[] => [
  severity === null ? '-' : colours[severity](severity),
  log,
  beam,
  cause === null ? 'nothing found' : wrap(meaningOf(cause), causeWidth),
  start === null ? '' : `${ongoing ? 'since ' : ''}${start.slice(0, 10)}`,
  forecast?.median ?? '',
];

/**
 * The table by which visits are planned, for people.
 *
 * @param most rows that it shows; how many more there are is told
 */
export function fleetText(told: Visits, most: number, look: Look): string {
  const { logs, beams, unusable } = plainly(told);
  const shown = beams.slice(0, most);
  const head = ['duty', 'log', 'beam', 'what for', 'when', 'forecast'];
  const count = (wanted: Visit['severity']) => counted(beams.filter(({ severity }) => severity === wanted).length);
  const sum = `${plural(beams.length, 'beam')} of ${plural(logs, 'log')}: ${count('act')} act, ${count('watch')} watch, ${count('note')} note, ${count(null)} without a finding.`;
  const lines = [
    wrap(
      'What needs a visit first. Duty: "act" is go, or treat as fire; "watch" is plan it; "note" is know it. Days in ' +
        'UTC; forecast: the day on which the slow loss is likely to have used up the margin.',
      look.width,
    ),
    '',
    ...(shown.length === 0 ? [] : [table([head, ...shown.map((each) => row(each, look))], '  '), '']),
    ...(shown.length < beams.length ? [`  ${plural(beams.length - shown.length, 'beam')} more`, ''] : []),
    wrap(sum, look.width),
  ];
  if (unusable.length > 0) {
    lines.push('', `${plural(unusable.length, 'log')} without a diagnosis, so nobody watches these beams:`);
    for (const { error } of unusable.slice(0, most)) lines.push(wrap(error, look.width, '  ', '    '));
    if (unusable.length > most) lines.push(`  ${plural(unusable.length - most, 'log')} more`);
  }
  return `${lines.join('\n')}\n`;
}
