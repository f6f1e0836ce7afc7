// Makes the weights that turn scores into probabilities, and measures them on logs of other ranges and another seed:
//   npm run train                        1200 logs to learn from, 220 to measure on; writes the weights, the picture, the figures
//   npm run train -- --measure           only measures the weights that are there
// Every file is the same, byte for byte, from the same seeds and the same code.
import { readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { score } from '../../../tests/evaluation/score.js';
import { causeWords } from '../src/diagnosis/index.js';
import { plainScores, type Weighing, weighingBy } from '../src/diagnosis/weighing/weighing.js';
import type { RangeSet } from '../src/simulation/index.js';
import { type ClaimedLog, claimedLog } from './weighing/claimedLog.js';
import { figuresText } from './weighing/figuresText.js';
import { judged } from './weighing/judged.js';
import { reliabilityPlot } from './weighing/reliabilityPlot.js';
import { weightsText } from './weighing/weightsText.js';

const { values } = parseArgs({
  options: {
    seed: { type: 'string', default: '11' },
    logs: { type: 'string', default: '1200' },
    'held-out-seed': { type: 'string', default: '80' },
    'held-out-logs': { type: 'string', default: '220' },
    measure: { type: 'boolean', default: false },
  },
});
const library = new URL('packages/beamkeep/', `file://${process.cwd()}/`);
const at = (path: string): string => fileURLToPath(new URL(path, library));
const weightsFile = at('src/diagnosis/weighing/weights.json');
const page = at('docs/weighing.md');

async function claimedLogs(ranges: RangeSet, seed: number, count: number): Promise<ClaimedLog[]> {
  const logs: ClaimedLog[] = [];
  for (let k = 1; k <= count; k++) {
    logs.push(await claimedLog(seed, k, { ranges }));
    if (k % 20 === 0) process.stderr.write(`${ranges} ${k} of ${count}\n`);
  }
  return logs;
}

if (!values.measure) {
  const origin = { ranges: 'weighing', seed: Number(values.seed), logs: Number(values.logs) } as const;
  await writeFile(weightsFile, weightsText(await claimedLogs(origin.ranges, origin.seed, origin.logs), origin));
}
const { causes } = JSON.parse(await readFile(weightsFile, 'utf8'));
const seed = Number(values['held-out-seed']);
const held = await claimedLogs('held-out', seed, Number(values['held-out-logs']));
const labelled = held.flatMap(({ truth }) => truth.beams.flatMap((beam) => beam.causes)).length;
const measured = (weighing: Weighing) =>
  score(
    held.flatMap((log) => judged(log, weighing)),
    causeWords,
    labelled,
  );
const [plain, weighed] = [measured(plainScores), measured(weighingBy(causes))];
const figures = figuresText(plain, weighed, `the held-out ranges with seed ${seed}`);
await writeFile(at('docs/reliability.svg'), reliabilityPlot(plain.reliability, weighed.reliability));
const text = await readFile(page, 'utf8');
await writeFile(
  page,
  text.replace(
    /(<!-- figures -->\n)[\s\S]*(<!-- end of figures -->)/,
    (_, open, close) => `${open}\n${figures}\n\n${close}`,
  ),
);
process.stdout.write(`${figures}\n`);
