// Everything that can be checked, one thing after the other, each even if an earlier one failed; then a table of what
// came out. Ends with 1 where anything failed.
//
//   npm run check               all of it
//   npm run check -- --short    without what takes long: for every day
//
// What the table of a developer's library must show, and what shows it:
//
//   published form    test (tests/package: entries, types, packed files, installed and used as a stranger would), size
//   documents         docs, test (tests/docs: every block, every docstring example, every link)
//   hostile input     fuzz, test (tests/log, tests/cli, tests/browser)
//   nothing lost      test (tests/cli/nothingLost: killed, full disk, folder that can only be read)
//   tests that bite   mutate (a fixed sample of each room, at least 85 % of it; `npm run mutate` tries all), coverage, test
//                     (tests/invariants.md)
//   supply            supply, same, test (tests/package: licences, what is imported is listed)
//   numbers           test (tests/package/install, tests/numbers: Node and Chromium, zones, locales)
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const short = process.argv.includes('--short');

/** What is checked, and the script of package.json that does it. */
const checks = [
  { what: 'format and lint', script: 'lint' },
  { what: 'types', script: 'types' },
  { what: 'build; all tests, those of the packed packages and of the pages among them', script: 'test' },
  { what: 'size of what a bundler takes, and of everything', script: 'size' },
  { what: 'reference from the docstrings', script: 'docs' },
  { what: 'the same build twice', script: 'same' },
  { what: 'lock file, known weaknesses', script: 'supply' },
  { what: 'seeded hostile input, a minute', script: 'fuzz', args: ['60'], long: true },
  { what: 'branches that the tests take, room by room', script: 'coverage', long: true },
  {
    what: 'changes of the code that the tests notice, a sample of each room',
    script: 'mutate',
    args: ['--sample'],
    long: true,
  },
];

const results = checks
  .filter(({ long }) => !(long && short))
  .map(({ what, script, args = [] }) => {
    console.log(`\n== npm run ${script}`);
    const start = performance.now();
    const { status } = spawnSync('npm', ['run', '--silent', script, '--', ...args], { cwd: root, stdio: 'inherit' });
    return { what, script, passed: status === 0, seconds: Math.round((performance.now() - start) / 1000) };
  });

console.log('');
for (const { what, script, passed, seconds } of results) {
  console.log(`${passed ? 'passed' : 'FAILED'}  ${String(seconds).padStart(4)} s  npm run ${script.padEnd(8)} ${what}`);
}
if (short)
  console.log(
    `left out: ${checks
      .filter(({ long }) => long)
      .map(({ script }) => script)
      .join(', ')}`,
  );
process.exitCode = results.every(({ passed }) => passed) ? 0 : 1;
