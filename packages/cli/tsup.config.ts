import { defineConfig } from 'tsup';

export default defineConfig({
  entry: ['src/run.ts'],
  format: ['esm'],
  target: 'node20',
  platform: 'node',
  clean: true,
  splitting: true,
});
