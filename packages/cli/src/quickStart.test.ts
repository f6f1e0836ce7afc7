import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { transformSync } from 'esbuild';
import { describe, expect, it } from 'vitest';

const program = fileURLToPath(new URL('quickStart.ts', import.meta.url));

/** What a Node of its own says on standard error when it starts so. */
function complaints(version: string): string {
  const { code } = transformSync(readFileSync(program, 'utf8'), { loader: 'ts', format: 'esm' });
  const input = `${code}\nquickStart(${JSON.stringify(version)});\nconsole.log('started');`;
  const { stdout, stderr } = spawnSync(process.execPath, ['--input-type=module', '-'], { input, encoding: 'utf8' });
  expect(stdout).toBe('started\n');
  return stderr;
}

describe('quickStart', () => {
  it('names no setting that this Node does not have', () => expect(complaints(process.version)).toBe(''));
  it('leaves a Node alone that it does not know', () => expect(complaints('v99.0.0')).toBe(''));
});
