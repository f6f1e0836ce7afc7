// Which branches of the library its own tests take, room by room. Printed, not demanded: a branch that no test takes is
// a question to the reader, and a number to be reached would be answered by tests that ask nothing. Whether the tests
// bite is measured by `npm run mutate`.
//
//   npm run coverage            the tests beside the library's files, and those of logs, diagnosis and published cases
//   npm run coverage -- PATH…   the tests below these paths
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const source = `${root}packages/beamkeep/src`;
const folder = 'node_modules/.cache/coverage';
const [...asked] = process.argv.slice(2);
const usual = ['packages/beamkeep/src', 'tests/published', 'tests/log', 'tests/diagnosis'];
const { status } = spawnSync(
  'npx',
  [
    'vitest run --config tests/vitest.config.ts --reporter=./tests/closingLine.ts --silent',
    '--coverage.enabled --coverage.provider=v8 --coverage.reporter=json-summary',
    `--coverage.reportsDirectory=${folder} --coverage.include=packages/beamkeep/src/**`,
  ]
    .flatMap((words) => words.split(' '))
    .concat(asked.length > 0 ? asked : usual),
  { cwd: root, stdio: 'inherit' },
);

const { total, ...files } = JSON.parse(readFileSync(`${root}${folder}/coverage-summary.json`, 'utf8'));
const rooms = new Map();
for (const [path, { branches }] of Object.entries(files)) {
  const [room, inside] = relative(source, path).split('/');
  const name = inside === undefined ? '(questions)' : room;
  const sum = rooms.get(name) ?? { covered: 0, total: 0 };
  rooms.set(name, { covered: sum.covered + branches.covered, total: sum.total + branches.total });
}
console.log('\nbranches taken');
for (const [name, { covered, total: all }] of [...rooms].sort()) console.log(line(name, covered, all));
console.log(line('all', total.branches.covered, total.branches.total));
process.exitCode = status ?? 1;

function line(name, covered, all) {
  return `  ${name.padEnd(14)} ${String(covered).padStart(5)} of ${String(all).padStart(5)}  ${((100 * covered) / Math.max(1, all)).toFixed(1).padStart(5)} %`;
}
