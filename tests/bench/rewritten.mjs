// The same log as another logger would write it: tabs, decimal commas, local times without an offset.
import { Transform } from 'node:stream';

/** A stream that rewrites a log of `YYYY-MM-DDThh:mm:ssZ,1.5,…`. */
export function rewritten() {
  return new Transform({
    transform(chunk, _, done) {
      done(
        null,
        chunk.toString('latin1').replace(/[,.]|Z,/g, (mark) => (mark === '.' ? ',' : '\t')),
      );
    },
  });
}
