import { describe, expect, it } from 'vitest';
import type { Io } from '../io.js';
import { main } from '../main.js';

async function run(...args: readonly string[]) {
  let out = '';
  let err = '';
  const io: Io = {
    stdin: (async function* () {})(),
    stdout: { write: (text) => (out += text), columns: 80 },
    stderr: { write: (text) => (err += text) },
    env: {},
  };
  return { code: await main(args, io), out, err };
}

describe('beamkeep numbers', () => {
  it('tells each constant with its source, and how far that can be trusted', async () => {
    const { code, out } = await run('numbers', 'usualWavelength');
    expect(code).toBe(0);
    expect(out).toMatch(
      /^The light and its lobe\n {2}usualWavelength {2}880 \(850 to 950\) nm\n {4}common practice, no source/,
    );
    expect(out.split('\n').every((line) => line.length <= 80)).toBe(true);
  });

  it('finds by all words, whatever their case', async () => {
    const all = (await run('numbers')).out.split('\n').length;
    const some = (await run('numbers', 'en', '54-12')).out.split('\n').length;
    expect(some).toBeGreaterThan(3);
    expect(some).toBeLessThan(all / 3);
  });

  it('gives every entry of the table as JSON, each with a source', async () => {
    const { format, numbers } = JSON.parse((await run('numbers', '--json')).out);
    expect(format).toBe('beamkeep-numbers/1');
    expect(numbers.length).toBeGreaterThan(100);
    for (const { name, value, source, seen } of numbers) expect([name, value, source, seen]).not.toContain(undefined);
  });

  it('says what to do where none is found', async () => {
    const { code, err } = await run('numbers', 'phlogiston');
    expect(code).toBe(2);
    expect(err).toBe(
      'beamkeep: numbers: no constant holds "phlogiston": leave words out, or see them all with "beamkeep numbers"\n',
    );
  });
});
