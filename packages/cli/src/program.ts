import { Command } from 'commander';
import type { CommandMaker } from './commands/command.js';
import { commands } from './commands/index.js';
import { type ExitCode, type Io, lineWidth, wantsColour } from './io.js';
import { caution } from './say/cautions.js';
import { wrap } from './say/wrap.js';
import { version } from './version.js';

const exitCodes =
  'Exit codes: 0 done; 1 findings at or above --fail-on; 2 wrong arguments, or input that cannot be used.';

/**
 * The command line: shared manners, then one command a file. Where the arguments begin with a command, it is the only
 * one; the help, and the word that may have been meant, need them all.
 *
 * @param args as the user gave them
 * @param done takes the exit code
 */
export async function program(args: readonly string[], io: Io, done: (code: ExitCode) => void): Promise<Command> {
  const root = new Command('beamkeep')
    .description('Explains the received-signal log of optical beam smoke detectors.')
    .version(version, '-V, --version', 'print the version')
    .helpOption('-h, --help', 'print this help')
    .helpCommand('help [command]', 'print the help of a command')
    .showSuggestionAfterError()
    .exitOverride()
    .configureOutput({
      writeOut: (text) => io.stdout.write(text),
      writeErr: (text) => io.stderr.write(text),
      outputError: () => undefined,
      getOutHelpWidth: () => lineWidth(io.stdout),
      getErrHelpWidth: () => lineWidth(io.stderr),
      getOutHasColors: () => wantsColour(io.stdout, io.env),
      getErrHasColors: () => wantsColour(io.stderr, io.env),
    })
    .addHelpText(
      'after',
      `
Examples:
  beamkeep diagnose datasets/tram-depot/log.csv.gz --site datasets/tram-depot/site.json
  beamkeep convert 35 --from percent --to decibels-per-metre --path 124
  beamkeep help diagnose

${wrap(exitCodes, 80)}

${wrap(caution, 80)}`,
    );
  for (const make of await makers(args[0])) root.addCommand(make(io, done).copyInheritedSettings(root));
  return root;
}

/** The command of this word, or every command. */
function makers(word: string | undefined): Promise<readonly CommandMaker[]> {
  const named = Object.entries(commands).filter(([known]) => known === word);
  const wanted = named.length > 0 ? named : Object.entries(commands);
  return Promise.all(wanted.map(([, load]) => load()));
}
