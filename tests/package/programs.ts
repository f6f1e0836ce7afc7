/*
 * What a stranger would write first, in each of the ways in which the library can be taken in. Every program diagnoses
 * the same small log and hands over the diagnosis, and all of them must agree to the last digit.
 */

/** A page's script, a bundled one and a worker get the log from the page's server. */
const fetched = `
const text = async (name) => (await fetch(name)).text();
const log = logOfText(await text('/log.csv'), 'log.csv');
const site = parseSite(await text('/site.json'));
`;
const diagnosed = 'JSON.stringify((await diagnose(log, site)).diagnosis)';

/** An ES module for Node: root, files, and every other entry. */
export const moduleProgram = (entries: readonly string[]): string => `
import { diagnose, UsageError } from 'beamkeep';
import { logFiles, siteFile } from 'beamkeep/node';
import { UsageError as sameError } from 'beamkeep/columns';
for (const entry of ${JSON.stringify(entries)}) {
  if (Object.keys(await import(entry)).length === 0) throw new Error(entry + ' is empty');
}
if (UsageError !== sameError) throw new Error('two kinds of UsageError');
const site = await siteFile('site.json');
const log = await logFiles(['log.csv']);
process.stdout.write(${diagnosed});
`;

/** The same for `require`. */
export const requireProgram = (entries: readonly string[]): string => `
const { diagnose, UsageError } = require('beamkeep');
const { logFiles, siteFile } = require('beamkeep/node');
for (const entry of ${JSON.stringify(entries)}) {
  if (Object.keys(require(entry)).length === 0) throw new Error(entry + ' is empty');
}
if (UsageError !== require('beamkeep/columns').UsageError) throw new Error('two kinds of UsageError');
(async () => {
  const site = await siteFile('site.json');
  const log = await logFiles(['log.csv']);
  process.stdout.write(${diagnosed});
})();
`;

/** Says what loading the library changed in the world around it: nothing, if the manifest is right to say so. */
export const quietProgram = (entries: readonly string[]): string => `
const world = () => {
  const holders = Reflect.ownKeys(globalThis)
    .map((key) => [String(key), globalThis[key]])
    .filter(([, held]) => held !== globalThis && (typeof held === 'function' || (typeof held === 'object' && held)));
  const names = holders.flatMap(([name, held]) =>
    [held, held.prototype].flatMap((each, i) => each ? Reflect.ownKeys(each).map((key) => name + i + String(key)) : []));
  return new Set([...Reflect.ownKeys(globalThis).map(String), ...names]);
};
world(); // what Node makes only when it is looked at is made now
const before = world();
const listeners = process.eventNames().length;
for (const entry of ${JSON.stringify(entries)}) await import(entry);
const added = [...world()].filter((name) => !before.has(name));
if (process.eventNames().length !== listeners) added.push('a listener of the process');
process.stdout.write(JSON.stringify([...added, ...process.getActiveResourcesInfo().filter((kind) => /Timeout|Immediate/.test(kind))]));
`;

/** TypeScript that uses types of the root, of files and of two rooms; `wrong` must not pass. */
export const typedProgram = `
import { convert, type Conversion, diagnose, type DiagnosisJson, type FindingJson, logOfText, parseSite } from 'beamkeep';
import { type Unit, percentToDecibels, units } from 'beamkeep/attenuation';
import { type LogFile, logFiles } from 'beamkeep/node';
import { type Site } from 'beamkeep/site';

const answer: Conversion = convert({ value: 35, from: 'percent', to: 'decibels' });
export const loss: number | 'infinite' = answer.result;
export const unit: Unit | undefined = units[0];
export const same: number = percentToDecibels(35);
export async function causes(csv: string, json: string): Promise<string[]> {
  const site: Site = parseSite(json);
  const { diagnosis }: { diagnosis: DiagnosisJson } = await diagnose(logOfText(csv), site);
  const findings: FindingJson[] = diagnosis.beams.flatMap((beam) => [...beam.findings]);
  return findings.map(({ cause }) => cause);
}
export const files = (): Promise<LogFile[]> => logFiles(['log.csv']);
// @ts-expect-error: a name is no number
export const wrong: string = percentToDecibels(35);
`;

/** A page's own script without a bundler: the standalone file, here and in a worker. */
export const pageProgram = `
import { diagnose, logOfText, parseSite } from './node_modules/beamkeep/dist/standalone.js';
${fetched}
window.inPage = ${diagnosed};
const worker = new Worker('./worker.js', { type: 'module' });
worker.onmessage = ({ data }) => { window.inWorker = data; };
`;
export const workerProgram = `
import { diagnose, logOfText, parseSite } from './node_modules/beamkeep/dist/standalone.js';
${fetched}
postMessage(${diagnosed});
`;

/** The same through a bundler, which finds the packages by their names. */
export const bundledProgram = `
import { diagnose, logOfText, parseSite } from 'beamkeep';
import { counts } from './everyRoom.js';
${fetched}
window.rooms = counts;
window.inPage = ${diagnosed};
const worker = new Worker(new URL('./worker.js', import.meta.url), { type: 'module' });
worker.onmessage = ({ data }) => { window.inWorker = data; };
`;
export const bundledWorker = `
import { diagnose, logOfText, parseSite } from 'beamkeep';
${fetched}
postMessage(${diagnosed});
`;

/** Takes every entry in whole, so that the bundler must resolve all packages behind them. */
export const everyRoom = (entries: readonly string[]): string => `
${entries.map((entry, i) => `import * as room${i} from '${entry}';`).join('\n')}
export const counts = [${entries.map((_, i) => `Object.keys(room${i}).length`).join(', ')}];
`;

/** A page that runs `main.js`. */
export const page = '<!doctype html><title>empty</title><script type="module" src="./main.js"></script>';
