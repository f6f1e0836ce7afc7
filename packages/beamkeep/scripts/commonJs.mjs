/*
 * The CommonJS build. The bundler splits ES modules only, so it runs twice: split into pieces that share their code
 * (one UsageError, not one an entry), then each piece turned into CommonJS, its map leading back to the source.
 *
 * Packages without a CommonJS form go in: Node before 20.19 cannot require them.
 */
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { build, transform } from 'esbuild';

const onlyModules = ['leven'];

/**
 * Writes dist/**.cjs beside the ES modules.
 *
 * @param library folder of the package
 * @param entryPoints paths of its entries from there
 */
export async function buildCommonJs(library, entryPoints) {
  const { dependencies } = JSON.parse(await readFile(join(library, 'package.json'), 'utf8'));
  const { outputFiles } = await build({
    absWorkingDir: library,
    entryPoints,
    outbase: 'src',
    outdir: 'dist',
    bundle: true,
    splitting: true,
    write: false,
    format: 'esm',
    platform: 'neutral',
    target: 'es2023',
    external: ['node:*', ...Object.keys(dependencies).filter((name) => !onlyModules.includes(name))],
    sourcemap: 'inline',
    logLevel: 'error',
  });
  await Promise.all(
    outputFiles.map(async ({ path, text }) => {
      const { code, map } = await transform(text, {
        format: 'cjs',
        target: 'es2023',
        sourcefile: basename(path),
        sourcemap: 'external',
      });
      const target = path.replace(/\.js$/, '.cjs');
      const named = code.replace(/\brequire\("(\.[^"]+)\.js"\)/g, 'require("$1.cjs")');
      await mkdir(dirname(target), { recursive: true });
      // A piece that only hands names on has no source to lead to.
      const own = !JSON.parse(map).sources.includes(basename(path));
      await writeFile(target, own ? `${named}//# sourceMappingURL=${basename(target)}.map\n` : named);
      if (own) await writeFile(`${target}.map`, map);
    }),
  );
}
