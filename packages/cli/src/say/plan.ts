import type { Plan } from 'beamkeep/planning';
import type { Look } from './look.js';
import { figure, plural } from './numbers.js';
import { plain } from './plain.js';
import { table } from './table.js';
import { limitsText, warningsText } from './warnings.js';
import { wrap } from './wrap.js';

/** A plan for people: rows, distances, figures with their clauses, warnings. */
export function planText(plan: Plan, { width, colours }: Look): string {
  const { hall, ruleSet, rows, beams, betweenRows, toSide, farthest, clearRadius } = plan;
  const roof = hall.roof.shape === 'pitched' ? `, apex ${figure(hall.roof.apex)} m` : '';
  const head = `Hall ${figure(hall.length)} x ${figure(hall.width)} m, ${figure(hall.height)} m high${roof}`;
  const rules = `By ${ruleSet.title}, edition ${ruleSet.edition}.`;
  const distances = [
    `${plural(beams.length, 'beam')} in ${plural(rows.length, 'row')}.`,
    `Rows at the roof at most ${figure(betweenRows)} m apart, ${figure(toSide)} m from the side walls;`,
    `no point of the floor is farther than ${figure(farthest)} m from one.`,
    clearRadius === null ? '' : `Keep ${figure(clearRadius)} m clear around every beam.`,
  ];
  const listed = rows.map(({ id, level, across, height, belowCeiling }) => {
    const [first] = beams.filter(({ row }) => row === id);
    const many = beams.filter(({ row }) => row === id).length;
    return [
      id,
      level,
      figure(across),
      figure(height),
      figure(belowCeiling),
      `${many === 1 ? '' : `${many} x `}${figure(first?.separation ?? Number.NaN)}`,
    ];
  });
  const figures = ruleSet.figures.map(({ name, value, unit, source, clause, seen }) => [
    name,
    `${figure(value)} ${unit}`,
    wrap(`${source}${clause === undefined || source.includes(clause) ? '' : `, ${clause}`} (${seen})`, width - 36),
  ]);
  return `${[
    `${colours.strong(head)}\n${wrap(plain(rules), width)}`,
    wrap(distances.filter((words) => words !== '').join(' '), width),
    table([['row', 'level', 'from left m', 'height m', 'below roof m', 'beam m'].map(colours.faint), ...listed], '  '),
    `Figures\n${table([['figure', 'value', 'from'].map(colours.faint), ...figures], '  ')}`,
    ...warningsText(plan.warnings, width),
    limitsText(plan, width),
  ].join('\n\n')}\n`;
}
