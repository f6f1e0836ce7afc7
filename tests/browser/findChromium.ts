import { execFile } from 'node:child_process';
import { mkdir, readFile, rename, rm } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { delimiter, dirname, join } from 'node:path';
import { promisify } from 'node:util';

/*
 * A real Chromium for the browser tests, on a developer's machine and on a bare one:
 *
 *   1  CHROMIUM_PATH: taken at its word; if it does not start, that is an error and nothing else is tried
 *   2  a browser on PATH that answers `--version`
 *   3  the browser that the package @sparticuz/chromium carries (Linux on x64)
 *   4  an error that names the command to install one
 *
 * Tests are never skipped for want of a browser.
 */

const run = promisify(execFile);

/** Names under which a Chromium is found on PATH, in the order they are tried. */
export const namesOnPath = [
  'chromium-headless-shell',
  'chromium',
  'chromium-browser',
  'google-chrome-stable',
  'google-chrome',
] as const;

/** What the search looks at, so that a test can set it. */
export interface Surroundings {
  /** Environment: `CHROMIUM_PATH` and `PATH` are read. */
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly platform: string;
  readonly arch: string;
}

const here: Surroundings = { env: process.env, platform: process.platform, arch: process.arch };

/**
 * Path of a Chromium that starts.
 *
 * @param surroundings environment, platform and processor; those of this process when left out
 * @throws Error when CHROMIUM_PATH does not start, or when there is no Chromium at all; it says what to do
 */
export async function findChromium(surroundings: Surroundings = here): Promise<string> {
  const { env, platform, arch } = surroundings;
  const { CHROMIUM_PATH: chosen, PATH = '' } = env;
  if (chosen) {
    if (await starts(chosen)) return chosen;
    throw new Error(`CHROMIUM_PATH is "${chosen}", which does not start. Mend it, or unset it to have one found.`);
  }
  for (const name of namesOnPath)
    for (const folder of PATH.split(delimiter).filter(Boolean)) {
      const path = join(folder, name);
      if (await starts(path)) return path;
    }
  if (platform === 'linux' && arch === 'x64') {
    const path = await unpacked();
    if (await starts(path)) return path;
  }
  throw new Error(
    'The browser tests need a Chromium and none starts here. Install one (on Debian: apt-get install ' +
      'chromium-headless-shell) or set CHROMIUM_PATH to one.',
  );
}

/** Whether the program answers `--version`. */
async function starts(path: string): Promise<boolean> {
  try {
    await run(path, ['--version'], { timeout: 30_000 });
    return true;
  } catch {
    return false;
  }
}

/** Folder of the packages that the workspace has installed. */
const modules = join(dirname(createRequire(import.meta.url).resolve('playwright-core/package.json')), '..');

/**
 * The packaged browser, unpacked once. It unpacks under one fixed name into the system's temporary folder and takes
 * whatever lies there for its own, so it gets a folder of its own, named after its version. Unpacked beside it first
 * and renamed when whole: a run that was cut off, or another at the same time, leaves nothing half.
 */
async function unpacked(): Promise<string> {
  const manifest: { version: string } = JSON.parse(
    await readFile(join(modules, '@sparticuz', 'chromium', 'package.json'), 'utf8'),
  );
  const folder = join(modules, '.cache', `chromium-${manifest.version}`);
  const path = join(folder, 'chromium');
  if (await starts(path)) return path;
  const fresh = `${folder}.${process.pid}`;
  await mkdir(fresh, { recursive: true });
  await unpackInto(fresh);
  try {
    await rename(fresh, folder);
  } catch {
    await rm(folder, { recursive: true, force: true });
    await rename(fresh, folder);
  }
  return path;
}

/** The package asks the system for its temporary folder: it is told ours while it unpacks. */
async function unpackInto(folder: string): Promise<void> {
  const { TMPDIR: before } = process.env;
  Object.assign(process.env, { TMPDIR: folder });
  try {
    const { default: chromium } = await import('@sparticuz/chromium');
    await chromium.executablePath();
  } finally {
    if (before === undefined) Reflect.deleteProperty(process.env, 'TMPDIR');
    else Object.assign(process.env, { TMPDIR: before });
  }
}
