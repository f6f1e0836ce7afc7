import { diagnose, parseSite, respond, UsageError } from 'beamkeep';
import fc from 'fast-check';
import { openedSheet, SheetFileError } from '../../notebook/src/sheet/sheetFile.js';
import { main } from '../../packages/cli/src/main.js';
import { logText } from '../log/logTexts.js';
import { awkward, bent, nestedJson } from './awkward.js';

/*
 * What strangers can hand us, each with the one thing it may do: give an answer, or refuse in one line that is safe to
 * print. Everything else that is thrown is a find.
 */

/** One way in, as a property that fails on a find. */
export interface Target {
  readonly name: string;
  property(): fc.IAsyncProperty<[unknown]>;
}

/** Longest time that one small input may take [ms], far above what it needs on a busy machine. */
const patience = 20_000;

// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const control = /[\u0000-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/;

/** Lets a piece of work answer or refuse; throws for anything else. */
export async function answersOrRefuses(work: () => unknown, refusal: typeof UsageError | typeof SheetFileError) {
  const start = performance.now();
  try {
    await work();
  } catch (error) {
    if (!(error instanceof refusal)) throw error;
    if (control.test(error.message)) throw new Error(`unsafe to print: ${JSON.stringify(error.message)}`);
    if (error.message.length > 4000) throw new Error(`a message of ${error.message.length} characters`);
  }
  const took = performance.now() - start;
  if (took > patience) throw new Error(`took ${Math.round(took)} ms`);
}

const target = <T>(name: string, inputs: fc.Arbitrary<T>, work: (input: T) => Promise<unknown>): Target => ({
  name,
  property: () => fc.asyncProperty(inputs as fc.Arbitrary<unknown>, async (input) => void (await work(input as T))),
});

const beam = { id: 'B1', layout: 'reflective', separation: 40, signalColumn: 'b1' };
const plainSite = {
  format: 'beamkeep-site/1',
  name: 'Tram depot (invented)',
  timeZone: 'Europe/Lisbon',
  beams: [beam],
};

/** A log in bytes: one with small faults, bent further; its site fits or not. */
const logs = fc.record({
  log: logText,
  bends: fc.array(fc.tuple(fc.nat(), awkward), { maxLength: 4 }),
  cut: fc.option(fc.nat(), { freq: 3 }),
  fits: fc.boolean(),
});

const log = target('log', logs, ({ log: { text, site }, bends, cut, fits }) => {
  const whole = bends.reduce((so, [at, piece]) => bent(so, at, piece), text);
  const bytes = new TextEncoder().encode(cut === null ? whole : whole.slice(0, cut % (whole.length + 1)));
  const source = () => ({
    name: 'log.csv',
    bytes: (async function* () {
      yield bytes;
    })(),
  });
  return answersOrRefuses(async () => {
    const known = parseSite({ ...plainSite, ...(fits ? site : {}) });
    await respond(source(), known);
    await diagnose(source(), known);
  }, UsageError);
});

const bytes = target('bytes', fc.uint8Array({ maxLength: 3000 }), (input) =>
  answersOrRefuses(async () => {
    async function* stream() {
      yield input;
    }
    await diagnose({ name: 'log.csv', bytes: stream() }, parseSite(plainSite));
  }, UsageError),
);

/** A site file with one value, or one key, replaced by something awkward. */
const sites = fc.oneof(
  fc
    .record({
      key: fc.oneof(fc.constantFrom(...Object.keys({ ...plainSite, ...beam }), 'visits', 'compensation'), awkward),
      value: nestedJson,
      inBeam: fc.boolean(),
    })
    .map(({ key, value, inBeam }) => {
      const added = Object.fromEntries([[key, value]]);
      return JSON.stringify(inBeam ? { ...plainSite, beams: [{ ...beam, ...added }] } : { ...plainSite, ...added });
    }),
  fc.tuple(fc.nat(), awkward).map(([at, piece]) => bent(JSON.stringify(plainSite), at, piece)),
  nestedJson.map((value) => JSON.stringify(value)),
);

const site = target('site', sites, (text) => answersOrRefuses(() => parseSite(text, 'site.json'), UsageError));

const sheets = fc.oneof(
  nestedJson.map((value) => JSON.stringify({ format: 'beamkeep-sheet/1', title: 'x', cells: value })),
  fc.array(nestedJson, { maxLength: 3 }).map((values) =>
    JSON.stringify({
      format: 'beamkeep-sheet/1',
      title: 'x',
      cells: values.map((settings, at) => ({ id: `${at}`, kind: 'look', folded: false, settings })),
    }),
  ),
  awkward,
);

const sheet = target('sheet', sheets, (text) => answersOrRefuses(() => openedSheet(text), SheetFileError));

const names = [
  'diagnose',
  'respond',
  'convert',
  'explain',
  'plan',
  'budget',
  'tradeoff',
  'aim',
  'covered',
  'thresholds',
];
const options = [
  '--site',
  '--json',
  '--from',
  '--to',
  '--path',
  '--at',
  '--fail-on',
  '--events',
  '--separation',
  '--help',
];
const lines = fc
  .tuple(
    fc.constantFrom(...names, 'fleet', 'prove', 'record', 'help'),
    fc.array(fc.oneof(fc.constantFrom(...options), fc.constantFrom('percent', '35', 'decibels', '-'), awkward), {
      maxLength: 8,
    }),
  )
  // No slash: nothing outside the folder is named; no names for what is written: nothing is.
  .map(([name, rest]) => [name, ...rest.map((word) => word.replaceAll('/', ':').replaceAll('\0', ''))]);

const line = target('arguments', lines, async (args) => {
  let told = '';
  const output = { write: (text: string) => (told += text) };
  async function* nothing() {}
  const code = await main(args, { stdin: nothing(), stdout: output, stderr: output, env: {} });
  if (![0, 1, 2].includes(code)) throw new Error(`exit code ${code}`);
  if (control.test(told.replaceAll('\n', ''))) throw new Error(`unsafe to print: ${JSON.stringify(told)}`);
});

/** Every way in. */
export const targets: readonly Target[] = [log, bytes, site, sheet, line];
