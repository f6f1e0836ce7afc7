import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { convert, diagnosisOf, respond } from 'beamkeep';
import { readTraces } from 'beamkeep/log';
import { explanationOf, panelEntries, secondCause } from 'beamkeep/moments';
import { logFiles, siteFile } from 'beamkeep/node';
import { beforeAll, describe, expect, it } from 'vitest';
import { withKeys } from '../../packages/beamkeep/scripts/keysTable.js';
import { blocksOf, root } from './pages.js';

/*
 * The page of formats beside what really comes out: the same keys, none missing, none too many. Keys that an output has
 * at times only are named here.
 */

const page = 'packages/beamkeep/docs/formats.md';
const demo = (name: string) => join(root, 'datasets/tram-depot', name);

/** Every key of a value with its place: "beams[].findings[].cause". Elements of a list count together. */
function places(value: unknown, at = ''): string[] {
  if (Array.isArray(value)) return [...new Set(value.flatMap((each: unknown) => places(each, `${at}[]`)))];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => [`${at}.${key}`, ...places(inner, `${at}.${key}`)]);
}

/** The JSON block of the page that holds a key. */
function block(key: string, value?: string): Record<string, unknown> {
  const found = blocksOf(page)
    .filter(({ kind }) => kind === 'json')
    .map(({ text }): Record<string, unknown> => JSON.parse(text))
    .find((each) => key in each && (value === undefined || each[key] === value));
  if (found === undefined) throw new Error(`${page}: no block of JSON with "${key}"`);
  return found;
}

/** Whether two shapes have the same places, those that come at times left out. */
function same(told: unknown, real: unknown, atTimes: RegExp): void {
  const [page, out] = [places(told), places(real)].map((each) => each.filter((place) => !atTimes.test(place)).sort());
  expect(page).toEqual(out);
}

async function opened() {
  const site = await siteFile(demo('site.json'));
  const read = await readTraces(await logFiles([demo('log.csv.gz')]), site);
  const events = panelEntries(await readFile(demo('events.csv')), 'events.csv', site);
  return { ...read, site, diagnosis: diagnosisOf(read.records, site, read.input, { events, explain: secondCause }) };
}
let depot: Awaited<ReturnType<typeof opened>>;
beforeAll(async () => {
  depot = await opened();
});

describe(page, () => {
  it('tells the keys of a site file as they are: "npm run docs:renew" draws them anew', async () => {
    const text = await readFile(join(root, page), 'utf8');
    const now = withKeys(text);
    const { RENEW_DOCS } = process.env;
    if (RENEW_DOCS === '1' && now !== text) await writeFile(join(root, page), now);
    else expect(text).toBe(now);
  });
  it('tells a diagnosis as it comes out', () => {
    const { clock, events, ...plain } = depot.diagnosis;
    same(block('format', 'beamkeep-diagnosis/1'), plain, /\.(notes\[\]|during|runnerUp)/);
    same(block('clock'), { clock, events }, /^$/);
    const [first] = depot.diagnosis.beams.flatMap(({ findings }) =>
      findings.filter(({ runnerUp }) => runnerUp?.finding),
    );
    same(block('runnerUp'), { runnerUp: first?.runnerUp }, /^$/);
  });
  it('tells an explanation as it comes out', () => {
    const { records, site, input } = depot;
    const real = explanationOf(records, site, input, { at: 'Tue 06:40', beam: 'B3' });
    same(block('format', 'beamkeep-explanation/1'), real, /\.(finding|runnerUp|notes\[\])\./);
  });
  it('tells a response and a conversion as they come out', async () => {
    const response = await respond(await logFiles([demo('log.csv.gz')]), depot.site);
    same(block('format', 'beamkeep-response/1'), response, /\.notes/);
    const conversion = block('from', 'percent');
    const { result } = convert({ value: 35, from: 'percent', to: 'decibels-per-metre', pathMetres: 50 });
    expect(Object.keys(conversion)).toEqual(['value', 'from', 'to', 'path', 'result']);
    const { result: told } = conversion;
    expect(told).toBeCloseTo(Number(result), 7);
  });
});
