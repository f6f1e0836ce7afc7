import { defineConfig } from 'tsup';

/** Every room is an entry and shared code is split off, so that importing one function brings only that function. */
export default defineConfig({
  entry: ['src/*.ts', 'src/*/index.ts', '!src/**/*.test.ts'],
  format: ['esm', 'cjs'],
  platform: 'neutral',
  external: [/^node:/],
  splitting: true,
  sourcemap: true,
  clean: true,
  dts: { compilerOptions: { ignoreDeprecations: '6.0' } },
});
