/**
 * The one error that a person can mend: wrong arguments, or input that cannot be used.
 *
 * The message says what was wrong, where (file, line, field or argument) and what to do. Everything else that is
 * thrown is our own fault and is left to show itself.
 */
export class UsageError extends Error {
  override readonly name = 'UsageError';
}
