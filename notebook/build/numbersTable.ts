import { readFileSync } from 'node:fs';
import { marked } from 'marked';
import type { Plugin } from 'vite';

const page = new URL('../../packages/beamkeep/docs/numbers.md', import.meta.url);

/** Puts the library's page "where the numbers come from" into `numbers.html`: one text, wherever it is read. */
export function numbersTable(): Plugin {
  return {
    name: 'beamkeep-numbers',
    transformIndexHtml: {
      order: 'pre',
      handler: (html) =>
        html.replace('<!-- the table of numbers -->', () => marked.parse(readFileSync(page, 'utf8'), { async: false })),
    },
  };
}
