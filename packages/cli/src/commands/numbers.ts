import { InvalidArgumentError } from 'commander';

/** Reads a number of the command line. */
export function number(text: string): number {
  const value = text.trim() === '' ? Number.NaN : Number(text);
  if (!Number.isFinite(value)) throw new InvalidArgumentError('It must be a number.');
  return value;
}

/** Reads a whole number of the command line. */
export function whole(text: string): number {
  const value = number(text);
  if (!Number.isSafeInteger(value)) throw new InvalidArgumentError('It must be a whole number.');
  return value;
}
