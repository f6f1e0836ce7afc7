import type { ProofJson, StepJson } from '../../answers/proofAnswer.js';
import type { SettingsOut } from '../../record/commissioningRecord.js';
import { figure, printed } from '../../words/figure.js';
import { wallTime } from '../../words/wallTime.js';
import { proofDrawing } from '../drawing/testDrawings.js';
import type { Footnotes } from '../footnotes.js';
import { type Content, html, type Markup } from '../markup.js';
import { amount, list, missing, table } from '../parts.js';

const marks = { pass: 'pass', fail: html`<b>FAIL</b>`, 'not shown': missing('not shown') } as const;

function expectedCell({ expected }: StepJson, notes: Footnotes): Content {
  const { obscuration, signal, window } = expected;
  const parts: Content[] = [];
  if (obscuration)
    parts.push(
      notes.number(
        `${figure(obscuration.value)} % (${figure(obscuration.low)} to ${figure(obscuration.high)})`,
        expected.do === 'filter' ? 'filter' : 'cover',
      ),
      '; ',
    );
  parts.push(signal ?? `no signal, ${expected.state}`);
  if (signal && window)
    parts.push(' after ', notes.number(`${figure(window.from)} to ${figure(window.to)} s`, 'window'));
  return parts;
}

/** The proof of a beam, step by step. */
export function proofSection(
  proof: ProofJson | null,
  settings: SettingsOut,
  timeZone: string,
  notes: Footnotes,
): Markup {
  if (proof === null) return html`<h3>Proof</h3><p>${missing('no proof')}</p>`;
  const { verdict, steps, unexplained, panelList } = proof;
  const measured = ({ obscuration, expected }: StepJson): Content =>
    obscuration === null || expected.do === 'uncover' ? '' : notes.number(amount(obscuration, '%'), 'measured');
  return html`
<h3>Proof: ${verdict} ${notes.references('measured', 'filter', 'window', 'rise')}</h3>
<p>${
    panelList
      ? "Judged by the received signal and by the panel's own list."
      : "Judged by the received signal alone; the panel's own list was not given."
  }</p>
<figure>${proofDrawing(proof, settings, timeZone)}</figure>
${table(
  ['no.', 'step', 'at', 'must show', 'took', 'result'],
  steps.map((step, at) => [
    String(at + 1),
    step.expected.do,
    step.start === null ? missing('not shown') : wallTime(step.start, timeZone).slice(11),
    expectedCell(step, notes),
    measured(step),
    html`${marks[step.verdict]}. ${printed(step.reasons.join(' '))}`,
  ]),
)}
${
  unexplained.length > 0 &&
  html`<p>Losses that belong to no step:</p>${list(
    unexplained.map(({ start, largest }) => `${wallTime(start, timeZone)}: ${figure(largest)} %`),
  )}`
}
`;
}
