// Everything that can be checked, one thing after the other, each even if an earlier one failed; then a table of what
// came out. Ends with 1 where anything failed.
//
//   npm run check
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));

/** What is checked, and the script of package.json that does it. */
const checks = [
  ['format and lint', 'lint'],
  ['types', 'types'],
  ['build; all tests, those of the packed packages and of the pages among them', 'test'],
  ['size of what a bundler takes', 'size'],
  ['reference from the docstrings', 'docs'],
  ['the same build twice', 'same'],
];

const results = checks.map(([what, script]) => {
  console.log(`\n== npm run ${script}`);
  const start = performance.now();
  const { status } = spawnSync('npm', ['run', '--silent', script], { cwd: root, stdio: 'inherit' });
  return { what, script, passed: status === 0, seconds: Math.round((performance.now() - start) / 1000) };
});

console.log('');
for (const { what, script, passed, seconds } of results) {
  console.log(`${passed ? 'passed' : 'FAILED'}  ${String(seconds).padStart(4)} s  npm run ${script.padEnd(6)} ${what}`);
}
process.exitCode = results.every(({ passed }) => passed) ? 0 : 1;
