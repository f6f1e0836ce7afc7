/* What bin/beamkeep.js runs: the command with the real arguments, streams and environment. */
import { main } from './main.js';

for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    // Whoever read us has read enough (`| head`): nothing to tell, and nobody to tell it to.
    if (error.code !== 'EPIPE') throw error;
  });
}

process.exitCode = await main(process.argv.slice(2), {
  get stdin() {
    return process.stdin;
  },
  stdout: process.stdout,
  stderr: process.stderr,
  env: process.env,
});
