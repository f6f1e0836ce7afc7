import { execFile } from 'node:child_process';
import { promisify } from 'node:util';

const run = promisify(execFile);

/** A package as it would be published. */
export interface Tarball {
  readonly name: string;
  readonly version: string;
  /** Name of the file in the folder that it was packed into. */
  readonly filename: string;
  readonly integrity: string;
  readonly files: readonly { readonly path: string; readonly size: number }[];
}

/**
 * Packs folders with npm.
 *
 * @param folders of packages
 * @param into folder for the tarballs; left out: nothing is written, only listed
 */
export async function tarballs(folders: readonly string[], into?: string): Promise<Tarball[]> {
  const where = into === undefined ? ['--dry-run'] : ['--pack-destination', into];
  const { stdout } = await run('npm', ['pack', '--json', '--ignore-scripts', ...where, ...folders], {
    maxBuffer: 1 << 26,
  });
  const packed: Tarball[] | Record<string, Tarball> = JSON.parse(stdout);
  return Object.values(packed);
}
