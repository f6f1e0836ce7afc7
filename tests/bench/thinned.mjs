// The same log from a slower logger: every so many-th sample.
import { Transform } from 'node:stream';

/** A stream that keeps the header and every `nth` line after it. */
export function thinned(nth) {
  let rest = '';
  let line = -1;
  return new Transform({
    transform(chunk, _, done) {
      const lines = (rest + chunk.toString('latin1')).split('\n');
      rest = lines.pop() ?? '';
      const kept = lines.filter(() => (++line <= 0 ? true : line % nth === 1));
      done(null, kept.map((text) => `${text}\n`).join(''));
    },
  });
}
