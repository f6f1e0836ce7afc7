import { causeWords } from '../../src/diagnosis/index.js';
import type { ClaimedLog } from './claimedLog.js';
import { examples } from './examples.js';
import { fitLines } from './fitLines.js';

/** Where the weights come from: enough to make them again. */
export interface Origin {
  readonly ranges: string;
  readonly seed: number;
  readonly logs: number;
}

/** The weights file of a set of logs: one line a cause, what is 0 left out, the same text from the same logs. */
export function weightsText(logs: readonly ClaimedLog[], { ranges, seed, logs: count }: Origin): string {
  const lines = fitLines(logs.flatMap(examples));
  const causes = causeWords.map((cause) => {
    const { beams: _, ...line } = lines[cause];
    const numbers = Object.entries(line).filter(([, value]) => value !== 0);
    return `    "${cause}": { ${numbers.map(([name, value]) => `"${name}": ${value}`).join(', ')} }`;
  });
  return `{
  "from": { "ranges": "${ranges}", "seed": ${seed}, "logs": ${count} },
  "causes": {
${causes.join(',\n')}
  }
}
`;
}
