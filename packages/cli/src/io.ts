/** A stream that the command prints to; `isTTY` and `columns` as Node sets them on a terminal. */
export interface Output {
  write(text: string): unknown;
  readonly isTTY?: boolean;
  readonly columns?: number;
}

/** Everything of the outside world that a command may touch beside files. */
export interface Io {
  readonly stdin: AsyncIterable<Uint8Array>;
  readonly stdout: Output;
  readonly stderr: Output;
  readonly env: Environment;
}

/** The variables of the environment that change what is printed. */
export interface Environment {
  readonly NO_COLOR?: string | undefined;
  readonly TERM?: string | undefined;
  readonly LC_ALL?: string | undefined;
  readonly LC_CTYPE?: string | undefined;
  readonly LANG?: string | undefined;
}

/** 0 done; 1 findings at or above `--fail-on`; 2 wrong arguments, or input that cannot be used. */
export type ExitCode = 0 | 1 | 2;

/** Characters in a line of text for people: the terminal's, within what reads well; 80 where there is no terminal. */
export function lineWidth({ isTTY, columns }: Output): number {
  return isTTY && columns ? Math.min(Math.max(columns, 60), 110) : 80;
}

/** Whether colour may be used: on a terminal that knows it, unless the user said NO_COLOR. */
export function wantsColour(output: Output, env: Environment): boolean {
  return output.isTTY === true && !env.NO_COLOR && env.TERM !== 'dumb';
}

/**
 * Whether signs beyond ASCII (Braille dots, line drawing) will be seen as meant.
 *
 * Only a locale that says otherwise, or a terminal known to lack them, falls back to plain ASCII: an unset locale is
 * usual in containers whose terminals show everything.
 */
export function knowsUnicode(env: Environment): boolean {
  const locale = env.LC_ALL || env.LC_CTYPE || env.LANG || 'UTF-8';
  return /utf-?8/i.test(locale) && env.TERM !== 'dumb' && env.TERM !== 'linux';
}
