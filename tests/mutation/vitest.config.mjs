// The tests that run against each change: those of one room, named by MUTATED_ROOM.
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { testsOf } from './rooms.mjs';

const source = fileURLToPath(new URL('../../packages/beamkeep/src/', import.meta.url));

export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  resolve: {
    alias: [
      { find: /^beamkeep$/, replacement: `${source}index.ts` },
      { find: /^beamkeep\/(commissioning|moments|planning)$/, replacement: `${source}$1Entry.ts` },
      { find: /^beamkeep\/(.+)$/, replacement: `${source}$1/index.ts` },
    ],
  },
  test: { include: testsOf(process.env.MUTATED_ROOM), testTimeout: 600_000 },
});
