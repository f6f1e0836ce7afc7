import type { FindingJson, RunnerUpJson } from 'beamkeep';
import { meaningOf } from './meaningOf.js';
import type { Clock } from './times.js';
import { unparted, wrap } from './wrap.js';

type Word = RunnerUpJson['cause'];

const meaning = (word: Word): string =>
  word === 'renormalised' ? 'the reading was set anew, the light is as it was' : meaningOf(word);

/** Where the second cause stands: found at the same time, at another, or only alike. */
function standing({ cause, finding }: RunnerUpJson, told: Clock): string {
  const name = `${cause} (${meaning(cause)})`;
  if (finding === null) return `${name}: not found here, but most easily mistaken for it.`;
  const sure = `${Math.round(finding.confidence * 100)} %`;
  return finding.sameTime
    ? `${name}, found at the same time (${sure}).`
    : `${name}, found on this beam at another time (${told.day(Date.parse(finding.start))}, ${sure}).`;
}

/**
 * What comes second for a finding, in paragraphs: which, why the signal may not part the two, what to do on site, what
 * each outcome looks like.
 */
export function runnerUpText(runnerUp: RunnerUpJson, told: Clock, width: number, indent = '    '): string {
  const paragraph = (text: string, deeper = '') =>
    wrap(unparted(text), width, `${indent}${deeper}`, `${indent}${deeper}  `);
  return [
    paragraph(`What comes second: ${standing(runnerUp, told)} ${runnerUp.alike}`),
    paragraph(`How to part them: ${runnerUp.test}`),
    ...runnerUp.outcomes.map(({ cause, looks }) => paragraph(`If ${cause}: ${looks}`, '  ')),
  ].join('\n');
}

/** The paragraphs of a finding that tells what comes second; nothing of one that does not. */
export const explained = ({ runnerUp }: FindingJson, told: Clock, width: number): string[] =>
  runnerUp === undefined ? [] : [runnerUpText(runnerUp, told, width)];
