import { UsageError } from 'beamkeep';
import { InvalidArgumentError } from 'commander';
import { number } from './numbers.js';

/** Reads numbers with commas between. */
export function numberList(text: string): number[] {
  return text.split(',').map((each) => number(each.trim()));
}

/** Adds `name=value` to those given before it. */
export function pairs(text: string, before: Readonly<Record<string, number>> = {}): Readonly<Record<string, number>> {
  const [name = '', value = '', ...rest] = text.split('=');
  if (name.trim() === '' || rest.length > 0) throw new InvalidArgumentError('It must be like name=1.5.');
  return { ...before, [name.trim()]: number(value) };
}

/** Adds a word to those given before it. */
export const several = (text: string, before: readonly string[] = []): readonly string[] => [...before, text];

/** Refuses an option that needs another one beside it. */
export function together(given: boolean, other: boolean, words: string): void {
  if (given && !other) throw new UsageError(words);
}
