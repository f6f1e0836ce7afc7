import { UsageError } from 'beamkeep';

/**
 * The value of an option that must be given.
 *
 * Commander can demand options itself, but looks for what is missing before it looks for what is misspelt: a person
 * who wrote `--form` would read that `--from` is missing, and not why.
 *
 * @param name as the help writes it
 */
export function required<T>(value: T | undefined, name: string): T {
  if (value === undefined) throw new UsageError(`${name} is missing: this command needs it`);
  return value;
}
