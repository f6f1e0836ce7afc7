import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { compiledAhead } from './build/compiledAhead.js';
import { numbersTable } from './build/numbersTable.js';
import { offline } from './build/offline.js';

const source = fileURLToPath(new URL('../packages/beamkeep/src/', import.meta.url));

/** The notebook as static files that can be served from any path. */
export default defineConfig({
  root: fileURLToPath(new URL('.', import.meta.url)),
  base: './',
  resolve: {
    alias: [
      { find: /^beamkeep$/, replacement: `${source}index.ts` },
      ...['commissioning', 'moments', 'planning'].map((room) => ({
        find: new RegExp(`^beamkeep/${room}$`),
        replacement: `${source}${room}Entry.ts`,
      })),
      { find: /^beamkeep\/(.+)$/, replacement: `${source}$1/index.ts` },
    ],
  },
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  worker: { format: 'es' },
  build: {
    target: 'es2022',
    rolldownOptions: {
      input: ['index.html', 'numbers.html'].map((name) => fileURLToPath(new URL(name, import.meta.url))),
    },
    // light-dark() must stay: the plots ask for the colours of either theme through it.
    cssTarget: ['chrome123', 'firefox120', 'safari17.5'],
    // Everything is a file of its own: a strict policy knows no data: fonts or scripts.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // The plotting library is one file of 4.8 MB that is fetched after the first paint.
    chunkSizeWarningLimit: 5000,
  },
  plugins: [numbersTable(), compiledAhead(/^plotly/), offline()],
});
