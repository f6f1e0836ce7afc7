import { readFileSync } from 'node:fs';
import cases from './cases.json' with { type: 'json' };
import parity from './parity.json' with { type: 'json' };

/** One worked case: inputs, what must come out, how close, and who says so. */
export interface PublishedCase<Inputs = unknown> {
  readonly id: string;
  readonly quantity: string;
  readonly inputs: Inputs;
  readonly expected: unknown;
  readonly tolerance: unknown;
  readonly source: string;
}

/** All cases of one quantity; a quantity without cases is an error, so that none can vanish unseen. */
export function casesOf<Inputs>(quantity: string): PublishedCase<Inputs>[] {
  const found = (cases as unknown as PublishedCase<Inputs>[]).filter((one) => one.quantity === quantity);
  if (found.length === 0) throw new Error(`no published case of "${quantity}"`);
  return found;
}

/** Every quantity that has a case. */
export const quantities = [...new Set((cases as unknown as PublishedCase[]).map((one) => one.quantity))];

/** One case computed by the named function of another library, looked up by the case's name. */
export function parityCase<I, R>(name: string): { inputs: I; results: R; function: string } {
  const found = parity.cases.find((one) => one.name === name);
  if (found === undefined) throw new Error(`no parity case "${name}"`);
  return found as unknown as { inputs: I; results: R; function: string };
}

/** Series that several parity cases share. */
export const sharedInputs: { noise: number[]; cycle: number[] } = parity.sharedInputs;

/** Columns of a data file of this folder, by the names in its header; lines that start with # are remarks. */
export function dataFile(file: string): Record<string, Float64Array> {
  const text = readFileSync(new URL(file, import.meta.url), 'utf8');
  const [header = '', ...lines] = text.split('\n').filter((line) => line !== '' && !line.startsWith('#'));
  const table = lines.map((line) => line.split(',').map(Number));
  return Object.fromEntries(
    header.split(',').map((name, i) => [name, Float64Array.from(table, (row) => row[i] ?? NaN)]),
  );
}
