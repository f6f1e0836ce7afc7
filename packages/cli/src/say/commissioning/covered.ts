import type { CoveredJson } from 'beamkeep/commissioning';
import { inputText } from '../inputText.js';
import type { Look } from '../look.js';
import { plainly } from '../plain.js';
import { table } from '../table.js';
import { clock } from '../times.js';
import { wrap } from '../wrap.js';
import { actionsText, sentencesText } from './points.js';
import { cautionsText } from './testCautions.js';
import { told, toldBetween } from './told.js';

const verdicts = { fit: 'fit', caution: 'fit, with a caution', refuse: 'refused: this beam can be fooled' } as const;

/** A covered test for people. */
export function coveredText(answer: CoveredJson, timeZone: string, { width, colours }: Look): string {
  const { beam, verdict, sentences, actions, ratio, ratioOfSiteFile, assumed, input, ...rest } = plainly(answer);
  const { before, covered, after, largestObscuration, alarm, fault } = rest;
  const wall = (time: string | null) => (time === null ? 'not known' : clock(timeZone).wall(Date.parse(time), true));
  const mark = { fit: colours.note, caution: colours.watch, refuse: colours.act }[verdict];
  const stretches = [
    ['stretch', 'from', 'to', 'samples', 'reading', 'of clean'].map(colours.faint),
    ...(
      [
        ['clean', before],
        ['covered', covered],
        ['clean', after],
      ] as const
    ).map(([name, stretch]) =>
      stretch === null
        ? [name, 'not found']
        : [
            name,
            wall(stretch.from),
            wall(stretch.to).slice(11),
            String(stretch.samples),
            told(stretch.reading),
            told(100 * stretch.share, '%'),
          ],
    ),
  ];
  const facts = [
    ['covered over clean', toldBetween(ratio)],
    ['by the site file', ratioOfSiteFile === null ? 'not given' : told(ratioOfSiteFile)],
    ['largest obscuration', `${told(largestObscuration.value, '%')}, at least ${told(largestObscuration.low, '%')}`],
    ['alarm threshold', `${told(alarm.threshold, '%')}: takes ${told(alarm.trueObscuration, '%')} of true obscuration`],
    [
      'fault threshold',
      `${told(fault.threshold, '%')}: ${fault.reachable === 'yes' ? 'reached in darkness' : fault.reachable === 'no' ? 'never reached' : 'in doubt'}`,
    ],
  ];
  return `${[
    `${colours.strong(`Beam ${beam}, covered test`)}  ${mark(verdicts[verdict])}`,
    sentencesText(sentences, width),
    table(stretches, '  '),
    table(facts, '  '),
    ...actionsText(actions, width),
    ...(assumed.length === 0 ? [] : [wrap(`Assumed: ${assumed.join('; ')}.`, width, '  ', '    ')]),
    inputText(input, width),
    cautionsText('covered', width),
  ].join('\n\n')}\n`;
}
