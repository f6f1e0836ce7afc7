// What the project stands on: the lock file fits the manifests, names every package by its checksum and no machine by its
// name; and no known weakness is in what is published, where a registry answers that question. Licences, and whether
// all that is imported is listed, are tested beside this file.
//
//   npm run supply
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const npm = (...args) => spawnSync('npm', args, { cwd: root, encoding: 'utf8', timeout: 120_000 });
const failures = [];

const listed = npm('ls', '--all', '--package-lock-only');
if (listed.status !== 0) failures.push(`the lock file does not fit the manifests: ${firstLine(listed.stderr)}`);

const { packages } = JSON.parse(readFileSync(`${root}package-lock.json`, 'utf8'));
const fetched = Object.entries(packages).filter(([path, { link }]) => path.includes('node_modules/') && !link);
for (const [path, { integrity, resolved }] of fetched) {
  if (!integrity?.startsWith('sha512-')) failures.push(`${path} has no checksum in the lock file`);
  if (resolved) failures.push(`${path} names the machine that it came from: ${resolved}`);
}
const needed = fetched.filter(([, { dev, devOptional, optional }]) => !dev && !devOptional && !optional);
console.log(`${fetched.length} packages in the lock file, ${needed.length} of them needed by what is published.`);

const audit = npm('audit', '--omit=dev', '--json');
const found = answer(audit.stdout)?.metadata?.vulnerabilities;
if (found === undefined) console.log('Not audited: no registry answered "npm audit" here.');
else {
  console.log(`npm audit: ${found.total} known weaknesses in what is published.`);
  if (found.high + found.critical > 0)
    failures.push(`${found.high + found.critical} of them high or critical: npm audit --omit=dev`);
}

for (const failure of failures) console.error(`FAILED  ${failure}`);
process.exitCode = failures.length > 0 ? 1 : 0;

function answer(text) {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function firstLine(text) {
  return text.trim().split('\n')[0];
}
