import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { rooms } from '../architecture/rooms.js';
import { root } from './pages.js';

/*
 * Examples in docstrings: "@example EXPRESSION // RESULT". What stands in them is run, and the result must be what is
 * written, to its last digit. An example that speaks of things that the reader has (a log, a site, a beam) cannot be
 * run; how many those may be is bounded.
 */

const source = join(root, 'packages/beamkeep/src');

interface Example {
  readonly where: string;
  readonly room: string;
  readonly expression: string;
  readonly result: string;
}

const examples: readonly Example[] = readdirSync(source, { recursive: true, encoding: 'utf8' })
  .filter((path) => /(?<!\.test|\.d)\.ts$/.test(path))
  .flatMap((path) =>
    [...readFileSync(join(source, path), 'utf8').matchAll(/@example (.+?) \/\/ (.+?)(?: \*\/)?$/gm)].map(
      ([, expression = '', result = '']) => ({
        where: `${path}: ${expression}`,
        room: path.includes('/') ? (path.split('/')[0] ?? '') : '',
        expression,
        result,
      }),
    ),
  );

const load = async (path: string): Promise<Record<string, unknown>> => import(pathToFileURL(join(source, path)).href);
const entries = ['index.ts', 'commissioningEntry.ts', 'momentsEntry.ts', 'planningEntry.ts'];
const questions = Object.assign({}, ...(await Promise.all(entries.map(load))));
const byRoom = new Map(
  await Promise.all(rooms.map(async ({ name }) => [name, await load(`${name}/index.ts`)] as const)),
);

/** What an example gives, or that it cannot be run. */
function outcome({ room, expression }: Example): { readonly value: unknown } | 'needs more' {
  const names = { ...(room === '' ? questions : byRoom.get(room)), ...byRoom.get('columns') };
  try {
    const run = new Function(...Object.keys(names), `return (${expression});`);
    return { value: run(...Object.values(names)) };
  } catch (error) {
    if (error instanceof ReferenceError || error instanceof SyntaxError) return 'needs more';
    throw error;
  }
}

const number = /-?(?:0x[\da-f]+|\d+(?:\.\d+)?(?:e[-+]?\d+)?)/gi;

/** The numbers of a value, in order; of an object those of the keys that are named, or all where none is. */
function numbersOf(value: unknown, named: string): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value === 'string') return [...value.matchAll(number)].map(([text]) => Number(text));
  if (ArrayBuffer.isView(value) || Array.isArray(value)) {
    return Array.from(value as unknown as ArrayLike<unknown>).flatMap((each) => numbersOf(each, named));
  }
  if (typeof value !== 'object' || value === null) return [];
  const keys = Object.keys(value).filter((key) => named.includes(`${key}: `));
  return Object.entries(value)
    .filter(([key]) => keys.length === 0 || keys.includes(key))
    .flatMap(([, each]) => numbersOf(each, named));
}

/** A result without the remark behind it: "0.6875: 31.25 % obscuration, not 30 %". */
const withoutRemark = (result: string): string =>
  /^[{[]/.test(result) ? result : result.replace(/(: |, not ).*$/, '');

/** Half of the last digit that a number is written with. */
const precision = (text: string): number =>
  /^-?0x/i.test(text)
    ? 0
    : 0.5000001 * 10 ** (Number(/e([-+]?\d+)/i.exec(text)?.[1] ?? 0) - (/\.(\d+)/.exec(text)?.[1]?.length ?? 0));

const runnable = examples.map((example) => ({ ...example, got: outcome(example) }));

describe('examples in docstrings', () => {
  for (const { where, result, got } of runnable) {
    if (got === 'needs more') continue;
    it(where, () => {
      const written = [...withoutRemark(result).matchAll(number)].map(([text]) => text);
      if (written.length === 0) {
        const told = Array.isArray(got.value) ? got.value.join(', ') : String(got.value);
        expect(told).toBe(result.replace(/^'|'$/g, ''));
        return;
      }
      const numbers = numbersOf(got.value, result);
      const inOrder = numbers.length === written.length;
      written.forEach((text, i) => {
        const candidates = inOrder ? [numbers[i] ?? Number.NaN] : numbers;
        const nearest = Math.min(...candidates.map((each) => Math.abs(each - Number(text))));
        expect(nearest, `${text} in "${result}", of ${numbers}`).toBeLessThanOrEqual(precision(text));
      });
    });
  }

  it('can be run in most cases', () => {
    const needing = runnable.filter(({ got }) => got === 'needs more');
    expect(needing.length / runnable.length).toBeLessThan(0.35);
  });
});
