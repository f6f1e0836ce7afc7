import type { Command } from 'commander';
import type { ExitCode, Io } from '../io.js';

/** One command of `beamkeep`: its arguments, its help and its work. `done` takes the exit code. */
export type CommandMaker = (io: Io, done: (code: ExitCode) => void) => Command;
