import { defineConfig, type Options } from 'tsup';

/** Every room is an entry and shared code is split off, so that importing one function brings only that function. */
const rooms: Options = {
  entry: ['src/*.ts', 'src/*/index.ts', '!src/**/*.test.ts'],
  platform: 'neutral',
  external: [/^node:/],
  splitting: true,
  sourcemap: true,
};

/** The root entry and all that it needs in one file, for a page without a bundler. */
const standalone: Options = {
  entry: { standalone: 'src/index.ts' },
  format: 'esm',
  platform: 'browser',
  target: 'es2022',
  noExternal: [/./],
  minify: true,
};

/** Types of both forms. The core is checked without those of Node (tsconfig.json): only `node.ts` needs them. */
const types: Options = {
  ...rooms,
  format: ['esm', 'cjs'],
  // ordered: the members of an inferred union are else printed in the order in which they were come by, which varies
  dts: { only: true, compilerOptions: { ignoreDeprecations: '6.0', types: ['node'], stableTypeOrdering: true } },
};

/** The CommonJS code is made by scripts/commonJs.mjs. */
export default defineConfig([{ ...rooms, format: 'esm' }, standalone, types]);
