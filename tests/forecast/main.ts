// How far forecasts of the margin are off, on invented courses of dirt:
//   npm run evaluate:forecast -- [--count 150] [--first 1001]
// Each figure carries its 95 % interval and what it rests on.
import { parseArgs } from 'node:util';
import type { Figure } from '../evaluation/score.js';
import { accuracy, type Outcome, outcomes } from './accuracy.js';
import { growthLaws, kinds } from './dirtSeries.js';

const { values } = parseArgs({
  options: { count: { type: 'string', default: '150' }, first: { type: 'string', default: '1001' } },
});
const [count, first] = [Number(values.count), Number(values.first)];

const told = ({ value, n, limits: [low, high] }: Figure): string =>
  `${value.toFixed(3)} (${low.toFixed(3)}-${high.toFixed(3)}, n ${n})`;

function line(law: string, kind: string, comes: readonly Outcome[], needless: string): string {
  const { error, lineError, coverage, missing } = accuracy(comes);
  const figures = [error, lineError, coverage].map((one) => told(one).padEnd(figure));
  const cells = [law.padEnd(11), kind.padEnd(10), ...figures, `${missing}`.padEnd(7)];
  return [...cells, needless].join('  ');
}

const figure = 29; // characters
const head = ['error of the day', 'of a straight line', 'inside low-high'].map((title) => title.padEnd(figure));
console.log(['grows in'.padEnd(11), 'kind'.padEnd(10), ...head, 'missing', 'needless'].join('  '));
for (const law of growthLaws) {
  const all = kinds.map((kind) => ({ kind, ...outcomes(kind, law, count, first) }));
  for (const { kind, comes, needless, never } of all) console.log(line(law, kind, comes, `${needless} of ${never}`));
  const sum = (key: 'never' | 'needless'): number => all.reduce((total, one) => total + one[key], 0);
  const comes = all.flatMap((one) => one.comes);
  console.log(line(law, 'all', comes, `${sum('needless')} of ${sum('never')}`));
}
