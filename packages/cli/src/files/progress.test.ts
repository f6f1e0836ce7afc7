import { PassThrough } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { metered } from './progress.js';

/** A stream that passes for a terminal, and what was written to it. */
function terminal(isTTY: boolean) {
  const stream = Object.assign(new PassThrough(), { isTTY, columns: 80 });
  return { stream, written: () => String(stream.read() ?? '') };
}

describe('metered', () => {
  it('draws a bar on a terminal for long input and takes it away', async () => {
    const { stream, written } = terminal(true);
    const answer = await metered(1e9, stream, async (onProgress) => {
      onProgress(1e8);
      return 7;
    });
    expect(answer).toBe(7);
    const text = written();
    expect(text).toContain('reading [');
    // ESC [ 0 K or 2 K: the line is cleared (ECMA-48, 8.3.41 EL).
    expect(text.trimEnd()).toMatch(/\[[02]?K$/);
  });
  it.each([
    ['short input', true, 1000],
    ['input of unknown length', true, undefined],
    ['no terminal', false, 1e9],
  ])('is silent for %s', async (_, isTTY, size) => {
    const { stream, written } = terminal(isTTY);
    await metered(size, stream, async (onProgress) => onProgress(500));
    expect(written()).toBe('');
  });
  it('takes the bar away when the work fails', async () => {
    const { stream, written } = terminal(true);
    await expect(metered(1e9, stream, () => Promise.reject(new Error('no')))).rejects.toThrow('no');
    expect(written().trimEnd()).toMatch(/\[[02]?K$/);
  });
});
