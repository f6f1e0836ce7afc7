// Builds everything twice and compares: the same sources must give the same bytes. Ends with 1 where they do not.
//
//   npm run same
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const built = ['packages/beamkeep/dist', 'packages/cli/dist', 'notebook/dist'];

/** What a build made: the checksum of each file. */
function build() {
  execFileSync('npm', ['run', '--silent', 'build'], { cwd: root, stdio: ['ignore', 'ignore', 'inherit'] });
  const files = built.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name)),
  );
  const checksum = (file) => createHash('sha256').update(readFileSync(file)).digest('hex');
  return new Map(files.sort().map((file) => [file.slice(root.length), checksum(file)]));
}

const [first, second] = [build(), build()];
const different = [...new Set([...first.keys(), ...second.keys()])].filter(
  (file) => first.get(file) !== second.get(file),
);
for (const file of different) console.log(`differs: ${file}`);
const whole = createHash('sha256')
  .update([...second].flat().join('\n'))
  .digest('hex');
console.log(`${second.size} files built twice, ${different.length} differ; checksum of all: ${whole}`);
process.exitCode = different.length === 0 ? 0 : 1;
