import type { Plugin } from 'vite';

/** Functions of fewer letters are compiled in no time. */
const least = 300;

/** What is looked at of a syntax tree (ESTree). */
interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly arguments?: readonly Node[];
}

/**
 * Puts brackets around the functions that a chunk hands over as arguments. A browser compiles what it loads on a thread
 * of its own, but puts off functions until they are called, and then the page stands still; those in brackets it takes
 * for called at once. The plotting library is one such function of 4.6 MB, made of others.
 *
 * @param name which chunks
 */
export function compiledAhead(name: RegExp): Plugin {
  return {
    name: 'beamkeep-compiled-ahead',
    apply: 'build',
    generateBundle(_options, bundle) {
      for (const chunk of Object.values(bundle)) {
        if (chunk.type !== 'chunk' || !name.test(chunk.name)) continue;
        const found: Node[] = [];
        collect(this.parse(chunk.code) as unknown as Node, found);
        chunk.code = bracketed(chunk.code, found);
      }
    },
  };
}

/** Finds functions that stand among the arguments of a call. */
function collect(node: Node, found: Node[]): void {
  for (const given of node.arguments ?? [])
    if (/^(?:Arrow)?Function/.test(given.type) && given.end - given.start >= least) found.push(given);
  for (const part of Object.values(node).flat()) if (isNode(part)) collect(part, found);
}

const isNode = (part: unknown): part is Node => typeof part === 'object' && part !== null && 'type' in part;

function bracketed(code: string, functions: readonly Node[]): string {
  const marks = functions
    .flatMap(({ start, end }): [number, string][] => [
      [start, '('],
      [end, ')'],
    ])
    .sort(([a], [b]) => a - b);
  let at = 0;
  const pieces: string[] = [];
  for (const [place, mark] of marks) {
    pieces.push(code.slice(at, place), mark);
    at = place;
  }
  return pieces.join('') + code.slice(at);
}
