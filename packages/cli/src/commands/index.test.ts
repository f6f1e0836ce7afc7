import { describe, expect, it } from 'vitest';
import { commands } from './index.js';

describe('commands', () => {
  it.each(Object.entries(commands))('%s goes by that word', async (word, load) => {
    const make = await load();
    const io = { stdin: (async function* () {})(), stdout: { write() {} }, stderr: { write() {} }, env: {} };
    expect(make(io, () => {}).name()).toBe(word);
  });
});
