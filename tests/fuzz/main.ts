import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { targets } from './targets.js';

/*
 * Long seeded runs over everything that strangers can hand us. Each batch prints its seed before it starts, so that
 * one that never ends can be named as well:
 *
 *     npm run fuzz -- SECONDS [FIRST-SEED]
 */

const [seconds = '60', first = '1'] = process.argv.slice(2);
const length = Number(seconds) * 1000;
if (!(length > 0) || !Number.isSafeInteger(Number(first))) {
  console.error('fuzz: seconds above 0, then a whole number as the first seed');
  process.exit(2);
}

/** Memory that may be held when thousands of inputs are done with and swept up, the programs included [bytes]. */
const mostMemory = 300e6;

const folder = mkdtempSync(join(tmpdir(), 'beamkeep-fuzz-'));
process.chdir(folder);
const end = performance.now() + length;
const tally = new Map(targets.map(({ name }) => [name, { inputs: 0, finds: 0 }]));
for (let seed = Number(first); performance.now() < end; seed++) {
  for (const { name, property } of targets) {
    if (performance.now() >= end) break;
    if (process.stderr.isTTY) process.stderr.write(`\r${name} ${seed}   `);
    const found = await fc.check(property(), {
      seed,
      numRuns: 100,
      interruptAfterTimeLimit: Math.max(1, end - performance.now()),
    });
    const count = tally.get(name);
    if (count) count.inputs += found.numRuns;
    if (found.failed && !found.interrupted && count) {
      count.finds++;
      console.log(`${name}, seed ${seed}: ${fc.defaultReportMessage(found) ?? ''}\n${String(found.errorInstance)}`);
    }
  }
  globalThis.gc?.();
  const { heapUsed, external } = process.memoryUsage();
  if (heapUsed + external > mostMemory)
    throw new Error(`seed ${seed}: ${Math.round((heapUsed + external) / 1e6)} MB of memory are held`);
}
process.chdir('/');
rmSync(folder, { recursive: true });
console.log('');
for (const [name, { inputs, finds }] of tally) {
  console.log(`${name.padEnd(10)} ${String(inputs).padStart(8)} inputs ${String(finds).padStart(4)} finds`);
}
console.log(`memory ${Math.round(process.resourceUsage().maxRSS / 1000)} MB at most`);
process.exitCode = [...tally.values()].some(({ finds }) => finds > 0) ? 1 : 0;
