import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { setFlagsFromString } from 'node:v8';
import { transformSync } from 'esbuild';
import { describe, expect, it, vi } from 'vitest';
import { quickStart } from './quickStart.js';

vi.mock('node:v8', () => ({ setFlagsFromString: vi.fn() }));

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
  it.each(['v22.0.0', 'v24.0.0', 'v99.0.0'])('leaves Node %s alone', (version) => {
    quickStart(version);
    expect(setFlagsFromString).not.toHaveBeenCalled();
  });
  it('tells Node 20', () => {
    quickStart('v20.11.0');
    expect(setFlagsFromString).toHaveBeenCalled();
  });
});
