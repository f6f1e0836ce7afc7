import type { Io } from '../io.js';
import { jsonLine } from '../say/json.js';
import { type FleetLine, fleetLine } from './fleetLine.js';
import { textLines } from './textLines.js';

/** Bytes of a name: no system has longer ones. */
const longestName = 64e3;

/** Names of logs in, one a line; their lines out, in the same order, each as soon as it is ready. */
export async function* pipeStep(io: Io): AsyncGenerator<FleetLine> {
  for await (const { text } of textLines(io.stdin, 'standard input', longestName)) {
    const name = text.replace(/\r$/, '').replace(/^(?:\.\/)+/, '');
    if (name === '') continue;
    const line = await fleetLine(name, io);
    io.stdout.write(jsonLine(line));
    yield line;
  }
}
