import type { CommissioningRecord, FindingOut } from '../../record/commissioningRecord.js';
import { wallTime } from '../../words/wallTime.js';
import { type Content, html, type Markup } from '../markup.js';
import { missing, table } from '../parts.js';

const verdicts = {
  confirmed: 'confirmed',
  rejected: 'rejected: it was not so',
  relabelled: 'it was something else',
} as const;

function found({ onSite }: FindingOut): Content {
  if (onSite === null) return missing('nobody has looked yet');
  const { verdict, cause, note } = onSite;
  return [
    verdicts[verdict],
    cause !== null && `, namely ${cause}`,
    note !== '' && html`. <span class="written">${note}</span>`,
  ];
}

/** Day and time of the clock, each in one piece. */
const clock = (iso: string, timeZone: string): Content =>
  wallTime(iso, timeZone)
    .slice(0, 16)
    .split(' ')
    .map((part) => html`<span class="noted">${part}</span> `);

/** What the received signal says, and what was found on site; nothing where no diagnosis belongs to the record. */
export const findingsSection = ({ findings, site }: CommissioningRecord): Markup | undefined =>
  findings === null
    ? undefined
    : html`
<h2>Findings of the received signal, and what was found on site</h2>
${
  findings.length === 0
    ? html`<p>Nobody has judged a finding, and none asks for someone to go.</p>`
    : table(
        ['beam', 'from', 'to', 'finding', 'found on site'],
        findings.map((finding) => [
          html`<span class="written">${finding.beam}</span>`,
          clock(finding.start, site.timeZone),
          clock(finding.end, site.timeZone),
          html`<b>${finding.cause}</b>, ${finding.severity}, ${Math.round(100 * finding.confidence)} %. ${finding.summary}`,
          found(finding),
        ]),
      )
}
`;
