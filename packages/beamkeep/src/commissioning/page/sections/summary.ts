import type { BeamOut, CommissioningRecord, PointOut } from '../../record/commissioningRecord.js';
import { printed } from '../../words/figure.js';
import { html, type Markup } from '../markup.js';
import { list, missing, table } from '../parts.js';

const aimed = { good: 'on the peak', 'look again': 'look again', 'not known': 'aim not told' } as const;
const covered = { fit: 'fit', caution: 'caution', refuse: 'REFUSED' } as const;
const proved = { pass: 'pass', open: 'open', fail: 'FAIL' } as const;

const row = ({ id, settings, aim, covered: test, proof }: BeamOut) => [
  html`<span class="written">${id}</span>`,
  `${settings.separation} m, ${settings.layout}`,
  `${settings.alarmThreshold} %, ${settings.alarmDelay} s`,
  aim ? aimed[aim.verdict] : missing('not scanned'),
  test ? covered[test.verdict] : missing('not covered'),
  proof ? proved[proof.verdict] : missing('not proved'),
];

const point = ({ beam, words }: PointOut) => (beam === null ? printed(words) : html`<b>${beam}</b> ${printed(words)}`);

/** The record at a glance: beams, what wants looking at, what is missing. */
export const summarySection = ({ beams, attention, missing: gaps }: CommissioningRecord): Markup => html`
<h2>At a glance</h2>
${table(['beam', 'path', 'alarm', 'aim', 'covered test', 'proof'], beams.map(row))}
<div class="box"><h3>Look at this before the hand-over (${attention.length})</h3>
${attention.length === 0 ? html`<p>Nothing failed, and nothing wants looking at.</p>` : list(attention.map(point))}</div>
<div class="box"><h3>Missing in this record (${gaps.length})</h3>
${gaps.length === 0 ? html`<p>Nothing.</p>` : list(gaps.map(point))}</div>
`;
