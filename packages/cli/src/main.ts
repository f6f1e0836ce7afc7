import { UsageError } from 'beamkeep/columns';
import { CommanderError } from 'commander';
import type { ExitCode, Io } from './io.js';
import { program } from './program.js';
import { plain } from './say/plain.js';

/** What commander says, as one line without its own prefix. */
const oneLine = (message: string): string =>
  message
    .replace(/^error: /, '')
    .trim()
    .replace(/\s*\n\s*/g, ' ');

/**
 * Runs the command with these arguments (without the names of Node and of the script).
 *
 * Never ends the process, so that a test can call it. What a person can mend is told in one line on `io.stderr`, exit
 * code 2; everything else that is thrown is our own fault and is left to show itself.
 */
export async function main(args: readonly string[], io: Io): Promise<ExitCode> {
  let code: ExitCode = 0;
  const done = (wanted: ExitCode) => {
    code = wanted;
  };
  try {
    const line = await program(args, io, done);
    await line.parseAsync(args.length === 0 ? ['--help'] : [...args], { from: 'user' });
    return code;
  } catch (error) {
    if (error instanceof CommanderError) {
      if (error.exitCode === 0) return 0;
      io.stderr.write(`beamkeep: ${plain(oneLine(error.message))}\n`);
      return 2;
    }
    if (!(error instanceof UsageError)) throw error;
    io.stderr.write(`beamkeep: ${plain(error.message)}\n`);
    return 2;
  }
}
