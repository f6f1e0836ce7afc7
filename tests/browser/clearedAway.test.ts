import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, inject, it } from 'vitest';
import { eventually } from './notebook.js';

/*
 * A browser clears its memory whenever it likes, also while a file is being read. What it clears away by mistake is not
 * missed at once: the read just never ends.
 */

let browser: Browser;
beforeAll(async () => {
  browser = await chromium.launch({ executablePath: inject('chromium'), args: ['--js-flags=--expose-gc'] });
});
afterAll(() => browser?.close());

/** Length of the file [bytes], and how often it is read. */
const length = 1_300_000;
const times = 60;

/** The worker: reads a file again and again while its memory is cleared all the time. */
const reading = `
  import { bytesOf } from './bytesOf.ts';
  onmessage = async ({ data: file }) => {
    setInterval(() => gc());
    for (let time = 0; time < ${times}; time++) {
      let length = 0;
      for await (const chunk of bytesOf(file)) length += chunk.length;
      postMessage(length);
    }
  };`;

/** Run in the page: starts the worker and notes how many bytes it has read each time. */
const started = (code: string): string => `{
  globalThis.lengths = [];
  const worker = new Worker(URL.createObjectURL(new Blob([${JSON.stringify(code)}])));
  worker.onmessage = ({ data }) => lengths.push(data);
  worker.postMessage(new Blob([new Uint8Array(${length})]));
}`;

it('a file is read to its end, however often the browser clears its memory meanwhile', async () => {
  const resolveDir = fileURLToPath(new URL('../../notebook/src/bench/', import.meta.url));
  const built = await build({ stdin: { contents: reading, resolveDir }, bundle: true, write: false });
  const page = await browser.newPage();
  await page.evaluate(started(built.outputFiles[0]?.text ?? ''));
  await eventually(() => page.evaluate('lengths')).toEqual(Array(times).fill(length));
});
