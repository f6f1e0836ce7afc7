// The thread in which the tests of a room run (see oneProcess.mjs): loads them once, then answers one question after
// the other. What it was started with changed stays changed; any other change is made for one question alone.
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { parentPort, workerData } from 'node:worker_threads';
import { collectTests, getFn, getHooks } from '@vitest/runner';
import { getSuites, getTests } from '@vitest/runner/utils';

const { files, folder, changedWhileLoading, place } = workerData;

/** What the changed code asks whether it shall be another, and tells that it was come by. */
const changes = { mutantCoverage: { static: {}, perTest: {} }, activeMutant: changedWhileLoading };
globalThis.__stryker__ = changes;

const tests = new Map();
let failure;
try {
  await load();
} catch (error) {
  failure = String(error?.message ?? error);
}
parentPort.postMessage({ failure });
parentPort.on('message', async ({ change, names }) => {
  parentPort.postMessage(names ? await noticed(change, names) : await allTests());
});

/** Vitest's own runner collects the tests; it is told just enough to do so. */
async function load() {
  const config = {
    root: process.cwd(),
    setupFiles: [],
    sequence: { hooks: 'stack', setupFiles: 'list' },
    tags: [],
    testTimeout: 0,
    hookTimeout: 0,
    maxConcurrency: 1,
    allowOnly: false,
  };
  const trace = (_name, ...rest) => rest.at(-1)();
  const importFile = (path) => import(pathToFileURL(resolve(folder, path.replace(/\.ts$/, '.js'))).href);
  for (const file of await collectTests(files, { config, trace, importFile })) {
    if (file.result?.state === 'fail') throw new Error(`${file.filepath}: ${file.result.errors?.[0]?.message}`);
    if (getSuites(file).some((suite) => Object.values(getHooks(suite)).some(({ length }) => length > 0)))
      throw new Error(`${file.filepath}: hooks are not run here; make what a test needs inside it`);
    for (const task of getTests(file)) {
      const name = `${file.filepath}: ${task.fullTestName ?? task.name}`;
      tests.set(tests.has(name) ? `${name} (${task.id})` : name, { file: file.filepath, run: getFn(task) });
    }
  }
}

/** Every test with what it takes, and what it comes by. */
async function allTests() {
  const told = [];
  for (const [name, test] of tests) {
    const [start, used] = [performance.now(), process.cpuUsage()];
    changes.currentTestId = name;
    const failure = await failureOf(test);
    changes.currentTestId = undefined;
    if (failure) return { failure: `${name}: ${failure}` };
    const { user, system } = process.cpuUsage(used);
    told.push({ name, file: test.file, milliseconds: performance.now() - start, seconds: (user + system) / 1e6 });
  }
  return { tests: told, coverage: changes.mutantCoverage };
}

/** The first of the named tests that notices a change, and whether it still fails when the change is taken back. */
async function noticed(change, names) {
  for (const [row, name] of names.entries()) {
    const test = tests.get(name);
    Atomics.store(place, 0, row);
    changes.activeMutant = change;
    const failure = await failureOf(test);
    changes.activeMutant = changedWhileLoading;
    if (failure)
      return { name, failure, tried: row + 1, left: changedWhileLoading ? undefined : await failureOf(test) };
  }
  return { tried: names.length };
}

async function failureOf(test) {
  try {
    await test.run();
    return undefined;
  } catch (error) {
    return String(error?.message ?? error) || 'failed without a word';
  }
}
