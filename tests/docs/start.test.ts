import { type ChildProcess, spawn } from 'node:child_process';
import { stripVTControlCharacters } from 'node:util';
import { afterAll, expect, it } from 'vitest';
import { root } from './pages.js';

let server: ChildProcess | undefined;
afterAll(() => {
  if (server?.pid !== undefined) process.kill(-server.pid);
});

it('npm start, once built, serves the notebook and prints its address', async () => {
  const child = spawn('npm', ['run', 'serve', '-w', 'beamkeep-notebook'], { cwd: root, detached: true });
  server = child;
  const address = await new Promise<string>((resolve, reject) => {
    let printed = '';
    child.stdout.on('data', (bytes: Uint8Array) => {
      printed += stripVTControlCharacters(Buffer.from(bytes).toString());
      const [found] = /http:\/\/127\.0\.0\.1:\d+\//.exec(printed) ?? [];
      if (found !== undefined) resolve(found);
    });
    child.on('exit', (code) => reject(new Error(`ended with ${code}: ${printed}`)));
  });
  const page = await fetch(address);
  expect(page.status).toBe(200);
  expect(await page.text()).toContain('beamkeep');
});
