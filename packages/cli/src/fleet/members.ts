import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { errorLine, type FleetLine } from './fleetLine.js';
import { parseLine } from './parseLine.js';
import { longestLine } from './resultsFile.js';
import { type TextLine, textLines } from './textLines.js';

/*
 * A member is this same command as a pipe step, `beamkeep fleet -`: a name goes in, its line comes out. One member a
 * core; a member that dies over a log (memory, a crash) takes nothing else along: its log is told, another takes over.
 * When the fleet itself is killed, their input ends and they end with it.
 */

interface Member {
  readonly process: ChildProcessWithoutNullStreams;
  readonly lines: AsyncGenerator<TextLine>;
}

function started(folder: string): Member {
  const [, program = ''] = process.argv;
  const child = spawn(process.execPath, [...process.execArgv, program, 'fleet', '-'], { cwd: folder });
  child.stdin.on('error', () => undefined); // It is gone: its output has ended too, and that is seen below.
  child.stderr.resume();
  return { process: child, lines: textLines(child.stdout, 'a member of the fleet', longestLine) };
}

/** How a process ended, in words. */
const ending = ({ process: { exitCode, signalCode } }: Member): string =>
  signalCode === null ? `exit code ${exitCode}` : `${signalCode}; was there enough memory?`;

const ended = ({ process: child }: Member): Promise<void> =>
  child.exitCode === null && child.signalCode === null
    ? new Promise((resolve) => child.once('exit', () => resolve()))
    : Promise.resolve();

/**
 * Has logs diagnosed by several processes at once.
 *
 * @param names taken in this order
 * @param folder in which the names start
 * @param take is given each line as soon as it is ready
 */
export async function byMembers(
  names: readonly string[],
  folder: string,
  jobs: number,
  take: (line: FleetLine) => Promise<void>,
): Promise<void> {
  const waiting = [...names].reverse();
  const alive = new Set<Member>();
  async function one(): Promise<void> {
    let member: Member | undefined;
    for (let name = waiting.pop(); name !== undefined; name = waiting.pop()) {
      if (/[\r\n]/.test(name)) {
        await take(errorLine(name, [], `${name}: a line break in its name: rename it`));
        continue;
      }
      member ??= started(folder);
      alive.add(member);
      member.process.stdin.write(`${name}\n`);
      const { value } = await member.lines.next();
      const line = value === undefined ? undefined : parseLine(value.text);
      if (line?.log === name) {
        await take(line);
        continue;
      }
      member.process.stdin.end();
      await ended(member);
      alive.delete(member);
      await take(errorLine(name, [], `${name}: the process that read it ended (${ending(member)})`));
      member = undefined;
    }
    if (member === undefined) return;
    member.process.stdin.end();
    alive.delete(member);
  }
  try {
    await Promise.all(Array.from({ length: Math.min(jobs, names.length) }, one));
  } finally {
    waiting.length = 0;
    for (const { process: child } of alive) child.kill();
  }
}
