import { mustShow, type ProofJson, type ProofPlanJson, proofVerdictWords } from 'beamkeep/commissioning';
import { inputText } from '../inputText.js';
import type { Look } from '../look.js';
import { plainly } from '../plain.js';
import { clock } from '../times.js';
import { wrap } from '../wrap.js';
import { cautionsText } from './testCautions.js';
import { told } from './told.js';

/** A proof sheet for people: to be printed before the test. */
export function proofPlanText(answer: ProofPlanJson, { width, colours }: Look): string {
  const { beam, steps, assumed } = plainly(answer);
  return `${[
    `${colours.strong(`Beam ${beam}, proof sheet`)}  ${steps.length} steps`,
    ...steps.map((step, at) =>
      [
        wrap(`${at + 1}. ${step.words}`, width, '  ', '     '),
        wrap(mustShow(step), width, '     ', '     '),
        ...[...step.doubts, ...step.cautions].map((words) =>
          wrap(colours.watch(`But ${words}.`), width, '     ', '     '),
        ),
        '     Done at ________   panel showed ________________   [ ] pass  [ ] fail',
      ].join('\n'),
    ),
    ...(assumed.length === 0 ? [] : [wrap(`Assumed: ${assumed.join('; ')}.`, width, '  ', '    ')]),
    cautionsText('prove', width),
  ].join('\n\n')}\n`;
}

/** How a proof came out, for people. */
export function proofText(answer: ProofJson, timeZone: string, { width, colours }: Look): string {
  const { beam, verdict, steps, unexplained, panelList, assumed, input } = plainly(answer);
  const wall = (time: string | null) =>
    time === null ? 'at a time not shown' : clock(timeZone).wall(Date.parse(time), true);
  const marks = { pass: colours.note, fail: colours.act, 'not shown': colours.watch } as const;
  const mark = { pass: colours.note, open: colours.watch, fail: colours.act }[verdict];
  return `${[
    `${colours.strong(`Beam ${beam}, proof`)}  ${mark(proofVerdictWords[verdict])}  ${panelList ? "judged by signal and panel's list" : 'judged by the signal alone'}`,
    ...steps.map((step, at) =>
      [
        `  ${at + 1}. ${marks[step.verdict](step.verdict)}  ${step.expected.do}, ${wall(step.start)}`,
        wrap(step.reasons.join(' '), width, '     ', '     '),
        ...(step.obscuration === null || step.expected.obscuration === null
          ? []
          : [`     measured ${told(step.obscuration, '%')}, expected ${told(step.expected.obscuration.value, '%')}`]),
      ].join('\n'),
    ),
    ...(unexplained.length === 0
      ? []
      : [
          [
            'Losses that belong to no step',
            ...unexplained.map(({ start, largest }) => `  ${wall(start)}: ${told(largest, '%')}`),
          ].join('\n'),
        ]),
    ...(assumed.length === 0 ? [] : [wrap(`Assumed: ${assumed.join('; ')}.`, width, '  ', '    ')]),
    inputText(input, width),
    cautionsText('prove', width),
  ].join('\n\n')}\n`;
}
