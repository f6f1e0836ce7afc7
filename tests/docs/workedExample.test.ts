import { execFile } from 'node:child_process';
import { mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { expect, it } from 'vitest';
import { root } from './pages.js';

const run = promisify(execFile);

it('the cause of the worked example in DEVELOPERS.md compiles where it says that it belongs', async () => {
  const page = await readFile(join(root, 'DEVELOPERS.md'), 'utf8');
  const [, code = ''] = /^```typescript\n([\s\S]*?)^```/m.exec(page) ?? [];
  expect(code).toContain("word: 'insects'");
  const folder = join(root, 'node_modules/.cache/beamkeep-example');
  await rm(folder, { recursive: true, force: true });
  await mkdir(join(folder, 'diagnosis/causes'), { recursive: true });
  // The word is not in the list yet: any other stands in for it.
  await writeFile(join(folder, 'diagnosis/causes/insects.ts'), code.replace("'insects'", "'condensation'"));
  const compilerOptions = { types: [], rootDirs: [join(root, 'packages/beamkeep/src'), folder] };
  await writeFile(
    join(folder, 'tsconfig.json'),
    JSON.stringify({ extends: join(root, 'tsconfig.json'), compilerOptions, include: ['.'], exclude: [] }),
  );
  const told = await run(process.execPath, [join(root, 'node_modules/typescript/bin/tsc'), '-p', folder]).catch(
    ({ stdout }: { stdout: string }) => ({ stdout }),
  );
  expect(told.stdout).toBe('');
});
