/* What bin/beamkeep.js runs: the command with the real arguments, streams and environment. */
import { main } from './main.js';
import { quickStart } from './quickStart.js';

quickStart(process.version);

let lost = false;
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', ({ code }: NodeJS.ErrnoException) => {
    // Whoever read us has read enough (`| head`): nothing to tell, and nobody to tell it to.
    if (code === 'EPIPE' || lost) return;
    lost = true;
    process.stderr.write(`beamkeep: the output cannot be written (${code})\n`);
    process.exitCode = 2;
  });
}

const code = await main(process.argv.slice(2), {
  get stdin() {
    return process.stdin;
  },
  stdout: process.stdout,
  stderr: process.stderr,
  env: process.env,
});
process.exitCode = lost ? 2 : code;
