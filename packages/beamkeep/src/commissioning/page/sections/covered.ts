import type { CoveredJson, CoveredStretchJson } from '../../answers/coveredAnswer.js';
import { figure, printed } from '../../words/figure.js';
import { wallTime } from '../../words/wallTime.js';
import { coveredDrawing } from '../drawing/testDrawings.js';
import type { Footnotes } from '../footnotes.js';
import { type Content, html, type Markup } from '../markup.js';
import { amount, amountBetween, facts, list, missing, table } from '../parts.js';

/** The covered test of a beam. */
export function coveredSection(test: CoveredJson | null, timeZone: string, notes: Footnotes): Markup {
  if (test === null) return html`<h3>Covered test</h3><p>${missing('no covered test')}</p>`;
  const { ratio, largestObscuration, alarm, fault, drift, sentences, actions, verdict } = test;
  const stretch = (name: string, found: CoveredStretchJson | null): Content[] =>
    found === null
      ? [name, missing('not found'), '', '', '']
      : [
          name,
          wallTime(found.from, timeZone),
          wallTime(found.to, timeZone).slice(11),
          figure(found.reading),
          `${figure(100 * found.share)} %`,
        ];
  return html`
<h3>Covered test: ${verdict} ${notes.references('ratio', 'largest', 'trueSmoke', 'drift')}</h3>
<figure>${coveredDrawing(test, timeZone)}</figure>
${list(sentences.map(printed))}
<div class="whole">${table(
    ['stretch', 'from', 'to', 'reading', html`of clean${notes.references('ratio')}`],
    [stretch('clean', test.before), stretch('covered', test.covered), stretch('clean', test.after)],
  )}</div>
${facts([
  [
    'covered over clean',
    notes.number(
      amountBetween({ value: 100 * ratio.value, low: 100 * ratio.low, high: 100 * ratio.high }, '%'),
      'ratio',
    ),
  ],
  ['largest obscuration', notes.number(amount(largestObscuration.value, '%'), 'largest')],
  [
    `true smoke at the alarm of ${figure(alarm.threshold)} %`,
    notes.number(amount(alarm.trueObscuration, '%'), 'trueSmoke'),
  ],
  [
    `fault of ${figure(fault.threshold)} %`,
    fault.reachable === 'yes' ? 'reached in darkness' : fault.reachable === 'no' ? 'never reached' : 'in doubt',
  ],
  [
    'clean reading, before to after',
    drift === null
      ? missing('one of them is missing')
      : notes.number(printed(`${figure(drift.percent)} % (${figure(drift.low)} to ${figure(drift.high)})`), 'drift'),
  ],
])}
${actions.length > 0 && html`<p>To do:</p>${list(actions)}`}
`;
}
