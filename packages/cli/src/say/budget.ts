import type { BudgetPart, LossBudget } from 'beamkeep/planning';
import type { Look } from './look.js';
import { figure } from './numbers.js';
import { table } from './table.js';
import { limitsText, warningsText } from './warnings.js';
import { wrap } from './wrap.js';

const decibels = (value: number): string => `${value.toFixed(2)} dB`;

/** Parts of a budget as a bar of letters: as many as their share, at least one where there is any. */
function bar(parts: readonly BudgetPart[], whole: number, columns: number): string {
  const drawn = parts
    .map(({ part, decibels: size }) => {
      const length = size <= 0 || whole <= 0 ? 0 : Math.max(1, Math.round((size / whole) * columns));
      return (part === 'left' ? '.' : (part[0] ?? '').toUpperCase()).repeat(length);
    })
    .join('');
  return `|${drawn.slice(0, columns).padEnd(columns, '.')}|`;
}

/** A loss budget for people: both bars and their parts. */
export function budgetText(budget: LossBudget, { width, colours }: Look): string {
  const section = (name: string, { decibels: whole, parts }: LossBudget['light']): string =>
    [
      colours.strong(`${name}: ${decibels(whole)}`),
      `  ${bar(parts, whole, width - 4)}`,
      table(
        parts.map(({ part, decibels: size }) => [part, decibels(size)]),
        '  ',
      ),
    ].join('\n');
  const smoke =
    budget.smokeToAlarm === 0
      ? 'No smoke is needed for an alarm any more.'
      : `At the worst moment ${figure(budget.smokeToAlarm)} % of smoke alarms.`;
  const spot = budget.overfilled
    ? 'The spot is larger than what should catch it: twice as far costs up to 12 dB of a reflective beam, 6 dB end-to-end.'
    : 'The spot fits: distance costs at most 6 dB for twice as far.';
  return `${[
    section('Received light, nearest to farthest range', budget.light),
    section('Alarm threshold', budget.alarm),
    wrap(`${smoke} ${spot}`, width),
    ...warningsText(
      budget.warnings.map((words) => ({ words })),
      width,
    ),
    limitsText(budget, width),
  ].join('\n\n')}\n`;
}
