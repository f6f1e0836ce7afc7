import type { AimJson } from 'beamkeep/commissioning';
import type { Look } from '../look.js';
import { plainly } from '../plain.js';
import { table } from '../table.js';
import { wrap } from '../wrap.js';
import { actionsText, sentencesText } from './points.js';
import { cautionsText } from './testCautions.js';
import { told, toldBetween } from './told.js';

const verdicts: Readonly<Record<AimJson['verdict'], string>> = {
  good: 'aimed well',
  'look again': 'look again before the head is locked',
  'not known': 'where the head was left is not told',
};

/** An aim scan for people. */
export function aimText(answer: AimJson, { width, colours }: Look): string {
  const { beam, axes, fit, left, residue, margins, movement, verdict, sentences, actions, notes } = plainly(answer);
  const mark = verdict === 'good' ? colours.note : colours.watch;
  const rows = [
    ['', ...axes].map(colours.faint),
    ['centre', ...fit.centre.map((centre) => toldBetween(centre, 'deg'))],
    ['half-angle', ...fit.halfAngle.map((angle) => toldBetween(angle, 'deg'))],
    ...(left === null ? [] : [['left off the peak by', ...left.offset.map((offset) => toldBetween(offset, 'deg'))]]),
  ];
  const facts = [
    ['lobe', fit.shape === 'gaussian' ? 'Gaussian' : `super-Gaussian, power ${toldBetween(fit.power)}`],
    ['peak, floor', `${toldBetween(fit.peak)}; ${toldBetween(fit.floor)} [received power]`],
    ['readings', `${fit.readings}, scattered by ${told(fit.residualSpread)}`],
    ...(left === null ? [] : [['loss where it was left', toldBetween(left.loss, 'dB')]]),
    ['stays when the beam is gone', `${told(100 * residue.share, '%')}, by the ${residue.from}`],
    [
      'margin before the alarm',
      `${toldBetween(margins.alarm.degrees, 'deg')}, ${told(margins.alarm.millimetres.value, 'mm')} at the far end`,
    ],
    [
      'margin before the fault',
      `${toldBetween(margins.fault.degrees, 'deg')}, ${told(margins.fault.millimetres.value, 'mm')} at the far end`,
    ],
  ];
  const moves = movement.map(({ degrees, millimetres, share, what }) => [
    `${told(degrees, 'deg')}`,
    told(millimetres, 'mm'),
    typeof share === 'number' ? `${told(100 * share, '%')}` : told(share),
    what,
  ]);
  return `${[
    `${colours.strong(`Beam ${beam}, aim`)}  ${mark(verdicts[verdict])}`,
    sentencesText(sentences, width),
    table(rows, '  '),
    table(facts, '  '),
    ...(moves.length === 0
      ? []
      : [
          `What the structure may do, against the margin before the alarm (limits of codes: the most that was allowed)\n${table(
            [['turn', 'moves', 'of the margin', 'what'].map(colours.faint), ...moves],
            '  ',
          )}`,
        ]),
    ...actionsText(actions, width),
    ...(notes.length === 0
      ? []
      : [
          notes
            .slice(0, 8)
            .map(({ line, what }) => wrap(`line ${line}: ${what}`, width, '  ', '    '))
            .join('\n'),
        ]),
    cautionsText('aim', width),
  ].join('\n\n')}\n`;
}
