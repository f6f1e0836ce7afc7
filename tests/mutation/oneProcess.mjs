/*
 * Tries the changes of a room's code quickly: its tests are bundled and loaded once into a thread (`attempts.mjs`), and
 * for each change only those run that come by it, the quickest first, up to the first that notices. Tests and assertions
 * are vitest's own (`expect.mjs`); its workers, which load everything anew for every change, are left out, and so is
 * the clock:
 *
 *     noticed    a test fails, and passes again when the change is taken back. Where it does not pass again a change has
 *                left something behind: everything is loaded afresh, and the change tried once more.
 *     endless    the change took far more processor time than its tests take without it. No clock: on a busy machine
 *                it would take slowness for an answer.
 *     survived   every test that comes by it passes.
 */
import { readFileSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { Worker } from 'node:worker_threads';
import { commonTokens, declareClassPlugin, PluginKind, tokens } from '@stryker-mutator/api/plugin';
import { DryRunStatus, MutantRunStatus, TestStatus } from '@stryker-mutator/api/test-runner';
import { build } from 'esbuild';
import { inSample, library, testFilesOf } from './rooms.mjs';

/** Processor time that a test may take before a change counts as endless: so much [s], and so many times its own. */
const patience = { seconds: 2, times: 5 };

class OneProcess {
  static inject = tokens(commonTokens.options);
  #files = testFilesOf(process.env.MUTATED_ROOM);
  #folder = resolve(`bundled-${process.pid}`);
  #thread;
  /** Which test the thread is at. */
  #place = new Int32Array(new SharedArrayBuffer(4));
  /** What each test takes [s]. */
  #seconds = new Map();

  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    await Promise.all([true, false].map((counting) => bundle(this.#files, this.#bundles(counting), counting)));
  }

  async dryRun() {
    const { failure, tests, coverage } = (await this.#load({ counting: true })) ?? (await this.#asked({}));
    if (failure) return { status: DryRunStatus.Error, errorMessage: failure };
    await this.#time();
    return {
      status: DryRunStatus.Complete,
      tests: tests.map(({ name, file, milliseconds }) => ({
        id: name,
        name,
        fileName: file,
        status: TestStatus.Success,
        timeSpentMs: milliseconds,
      })),
      mutantCoverage: coverage,
    };
  }

  async mutantRun({ activeMutant, testFilter, mutantActivation, reloadEnvironment }) {
    const { id } = activeMutant;
    if (!isAsked(activeMutant)) return { status: MutantRunStatus.Error, errorMessage: 'not of the sample' };
    if (this.#seconds.size === 0) await this.#time();
    const names = testFilter ?? [...this.#seconds.keys()];
    names.sort((a, b) => this.#seconds.get(a) - this.#seconds.get(b));
    if (reloadEnvironment || this.#thread === undefined) {
      const broken = await this.#load({ changedWhileLoading: mutantActivation === 'static' ? id : undefined });
      if (broken) return result({ name: names[0], ...broken });
    }
    const answer = await this.#tried(id, names);
    if (answer.left === undefined) return result(answer);
    await this.#load();
    return result(await this.#tried(id, names));
  }

  async dispose() {
    await this.#thread?.terminate();
    rmSync(this.#folder, { recursive: true, force: true });
  }

  /** Where the bundles lie, those that count what each test comes by, and those that do not. */
  #bundles(counting) {
    return join(this.#folder, counting ? 'counting' : 'plain');
  }

  #tried(change, names) {
    return this.#asked(
      { change, names },
      names.map((name) => this.#seconds.get(name)),
    );
  }

  /** Learns what each test takes where nothing is changed. */
  async #time() {
    await this.#load();
    const { tests } = await this.#asked({});
    this.#seconds = new Map(tests.map(({ name, seconds }) => [name, seconds]));
  }

  /** Loads every test, and the code with it, anew; tells what went wrong, if anything. */
  async #load({ counting = false, changedWhileLoading } = {}) {
    await this.#thread?.terminate();
    this.#thread = new Worker(new URL('attempts.mjs', import.meta.url), {
      workerData: { files: this.#files, folder: this.#bundles(counting), changedWhileLoading, place: this.#place },
      resourceLimits: { maxOldGenerationSizeMb: 2048 },
    });
    const answer = await this.#asked(undefined, [10]);
    return answer.failure || answer.endless ? answer : undefined;
  }

  /**
   * The thread's next answer; where a test takes too much processor time, or all memory, the thread ends.
   *
   * @param usual what each test in question takes [s]; left out, there is no limit
   */
  #asked(question, usual) {
    const thread = this.#thread;
    Atomics.store(this.#place, 0, 0);
    let [at, since] = [0, processorSeconds()];
    return new Promise((settle) => {
      const over = async (answer) => {
        clearInterval(watch);
        thread.off('message', over);
        thread.off('error', failed);
        if (answer.endless) {
          this.#thread = undefined;
          await thread.terminate();
        }
        settle(answer);
      };
      const failed = (error) => over({ endless: String(error) });
      const watch = setInterval(() => {
        const [now, place] = [processorSeconds(), Atomics.load(this.#place, 0)];
        if (place !== at) [at, since] = [place, now];
        const most = usual ? patience.seconds + patience.times * usual[at] : Number.POSITIVE_INFINITY;
        if (now - since > most) void over({ endless: 'took too much processor time' });
      }, 50);
      thread.on('message', over);
      thread.on('error', failed);
      if (question) thread.postMessage(question);
    });
  }
}

/** Whether a change is of the sample; Stryker counts lines and columns from 0 here, from 1 where it keeps the outcome. */
function isAsked({ fileName, location: { start }, replacement }) {
  const file = fileName.slice(fileName.lastIndexOf(library));
  const place = { line: start.line + 1, column: start.column + 1 };
  return inSample({ file, start: place, replacement }, Number(process.env.MUTATED_ONE_IN));
}

/** An answer of the thread, as Stryker takes it. */
function result({ name, failure, endless, tried = 0 }) {
  if (endless) return { status: MutantRunStatus.Timeout, reason: endless };
  if (failure) return { status: MutantRunStatus.Killed, killedBy: [name], failureMessage: failure, nrOfTests: tried };
  return { status: MutantRunStatus.Survived, nrOfTests: tried };
}

function processorSeconds() {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}

/** Tests with the library's code, shared between them; packages stay outside. A file still knows its own place. */
const bundle = (files, outdir, counting) =>
  build({
    absWorkingDir: process.cwd(),
    entryPoints: files,
    outbase: '.',
    outdir,
    bundle: true,
    splitting: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    packages: 'external',
    logLevel: 'error',
    plugins: [{ name: 'places', setup: (plugin) => places(plugin, counting) }],
  });

function places({ onResolve, onLoad }, counting) {
  const source = resolve('packages/beamkeep/src');
  const files = new Map([
    ['', 'index.ts'],
    ['node', 'node.ts'],
    ...['commissioning', 'moments', 'planning'].map((room) => [room, `${room}Entry.ts`]),
  ]);
  onResolve({ filter: /^vitest$/ }, () => ({ path: new URL('expect.mjs', import.meta.url).href, external: true }));
  onResolve({ filter: /^beamkeep($|\/)/ }, ({ path }) => {
    const room = path.slice('beamkeep/'.length);
    return { path: join(source, files.get(room) ?? `${room}/index.ts`) };
  });
  onLoad({ filter: /\.ts$/ }, ({ path }) => {
    const text = readFileSync(path, 'utf8').replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path).href));
    // Counting every place that is come by costs more than the tests themselves: once is enough.
    const contents = counting ? text : text.replace(/function stryCov_\w+\(\) \{/, '$& return;');
    return { contents, loader: 'ts' };
  });
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, 'oneProcess', OneProcess)];
