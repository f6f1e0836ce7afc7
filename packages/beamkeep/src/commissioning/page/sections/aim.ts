import type { AimJson } from '../../answers/aimAnswer.js';
import { figure, printed } from '../../words/figure.js';
import { aimDrawing } from '../drawing/aimDrawing.js';
import type { Footnotes } from '../footnotes.js';
import { html, type Markup } from '../markup.js';
import { amount, amountBetween, facts, list, missing, table } from '../parts.js';

/** The aim scan of a beam. */
export function aimSection(aim: AimJson | null, notes: Footnotes): Markup {
  if (aim === null) return html`<h3>Aim</h3><p>${missing('no aim scan')}</p>`;
  const { fit, left, residue, margins, movement, sentences, actions, verdict } = aim;
  const axes = aim.axes.flatMap((axis, k) => {
    const [halfAngle, offset] = [fit.halfAngle[k], left?.offset[k]];
    return [
      ...(halfAngle ? [[`half-angle, ${axis}`, notes.number(amountBetween(halfAngle, 'deg'), 'lobe')] as const] : []),
      [
        `left off the peak, ${axis}`,
        offset ? notes.number(amountBetween(offset, 'deg'), 'offset') : missing('not told'),
      ] as const,
    ];
  });
  const margin = ({ threshold, degrees, millimetres }: AimJson['margins']['alarm']) =>
    [
      [`turn before ${figure(threshold)} %`, notes.number(amountBetween(degrees, 'deg'), 'margin')],
      ['that is, at the far end', notes.number(amount(millimetres.value, 'mm'), 'farEnd')],
    ] as const;
  return html`
<h3>Aim: ${verdict} ${notes.references('lobe', 'offset', 'aimLoss', 'margin', 'farEnd')}</h3>
<figure>${aimDrawing(aim)}</figure>
${list(sentences.map(printed))}
${facts([
  ['lobe', notes.number(`${fit.shape}, ${fit.readings} readings`, 'lobe')],
  ...axes,
  ['loss where it was left', left ? notes.number(amountBetween(left.loss, 'dB'), 'aimLoss') : missing('not told')],
  [
    'stays without the beam',
    [
      notes.number(amount(100 * residue.share, '%'), residue.from === 'scan' ? 'lobe' : 'setting'),
      `, by the ${residue.from}`,
    ],
  ],
  ...margin(margins.alarm),
  ...margin(margins.fault),
])}
${
  movement.length > 0 &&
  html`<p>What the structure may do, against the turn before the alarm:</p><div class="whole">${table(
    ['what', 'turn', 'of the margin', 'source'],
    movement.map(({ what, degrees, share, formula, source, seen }) => [
      html`<span title="${formula}">${what}</span>`,
      amount(degrees, 'deg'),
      share === null || share === 'infinite' ? amount(share) : `${figure(100 * share)} %`,
      html`<span class="lead">${formula}; ${source} (${seen})</span>`,
    ]),
  )}</div>`
}
${actions.length > 0 && html`<p>To do:</p>${list(actions)}`}
`;
}
