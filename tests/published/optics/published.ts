import { expect, it } from 'vitest';
import { expectWithin } from '../compare.js';
import cases from './cases.json' with { type: 'json' };

/** One worked case: inputs, what must come out, how close, and who says so. */
interface PublishedCase<Inputs> {
  readonly id: string;
  readonly quantity: string;
  readonly inputs: Inputs;
  readonly expected: unknown;
  readonly tolerance: unknown;
  readonly source: string;
}

const all = cases as unknown as PublishedCase<unknown>[];
const tested = new Set<string>();

/** Makes a test of every case of one quantity; a quantity without a case is an error. */
export function testEach<Inputs>(quantity: string, found: (inputs: Inputs) => unknown): void {
  const mine = all.filter((one) => one.quantity === quantity) as PublishedCase<Inputs>[];
  if (mine.length === 0) throw new Error(`no published case of "${quantity}"`);
  tested.add(quantity);
  for (const { id, inputs, expected, tolerance, source } of mine) {
    it(`${id}: ${source}`, () => expectWithin(found(inputs), expected, tolerance));
  }
}

/** Makes a test that no quantity was left without one. */
export function testThatAllAreTested(): void {
  it('no published case is left without a test', () => {
    expect([...new Set(all.map((one) => one.quantity))].filter((quantity) => !tested.has(quantity))).toEqual([]);
  });
}
