import { causeWords } from '../../src/diagnosis/index.js';
import { nobody } from '../../src/diagnosis/weighing/beside.js';
import type { ClaimedLog } from './claimedLog.js';
import type { Example } from './fitLines.js';
import { alike, judged } from './judged.js';

/**
 * The claims of a log as examples to learn from: every one taken as a statement, right or wrong as the evaluation counts
 * it. What it counts as neither is left out.
 */
export function examples(log: ClaimedLog): Example[] {
  return judged(log, () => 1).flatMap(({ id, findings }) => {
    const claims = log.beams.find((beam) => beam.id === id)?.claims ?? [];
    const all = findings.map(({ cause, verdict }, row) => ({
      cause,
      verdict,
      score: claims[row]?.raw ?? Number.NaN,
      beside: claims[row]?.beside ?? nobody,
    }));
    return causeWords.flatMap((cause) => {
      const own = all.filter((one) => one.cause === cause && one.verdict !== 'neither');
      const shared = {
        cause,
        beam: `${log.name} ${id}`,
        alike: alike(claims, cause),
        weight: 1 / Math.sqrt(own.length),
      };
      return own.map(({ score, beside, verdict }) => ({ ...shared, score, beside, right: verdict === 'right' }));
    });
  });
}
