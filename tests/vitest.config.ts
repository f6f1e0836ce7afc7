import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));
const source = fileURLToPath(new URL('../packages/beamkeep/src/', import.meta.url));

export default defineConfig({
  root,
  resolve: {
    alias: [
      { find: /^beamkeep$/, replacement: `${source}index.ts` },
      { find: /^beamkeep\/node$/, replacement: `${source}node.ts` },
      { find: /^beamkeep\/(commissioning|moments|planning)$/, replacement: `${source}$1Entry.ts` },
      { find: /^beamkeep\/(.+)$/, replacement: `${source}$1/index.ts` },
    ],
  },
  test: {
    include: ['packages/*/src/**/*.test.ts', 'notebook/src/**/*.test.ts', 'tests/**/*.test.ts'],
    maxWorkers: '100%',
    // Only against what hangs: on every core of a small machine a page may take minutes.
    testTimeout: 240_000,
    hookTimeout: 240_000,
    globalSetup: fileURLToPath(new URL('browser/globalSetup.ts', import.meta.url)),
    reporters: ['default', fileURLToPath(new URL('closingLine.ts', import.meta.url))],
  },
});
