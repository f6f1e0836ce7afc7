import type { CommissioningRecord } from '../record/commissioningRecord.js';
import { wallTime } from '../words/wallTime.js';
import { footnotes } from './footnotes.js';
import { html } from './markup.js';
import { list, missing } from './parts.js';
import { aimSection } from './sections/aim.js';
import { coveredSection } from './sections/covered.js';
import { findingsSection } from './sections/findings.js';
import { peopleSection } from './sections/people.js';
import { proofSection } from './sections/proof.js';
import { settingsSection } from './sections/settings.js';
import { summarySection } from './sections/summary.js';
import { recordStyle } from './style.js';

const signatures = ['Commissioned by', 'Witnessed by', 'Accepted for the owner by', 'Panel and monitoring restored by'];

/**
 * A commissioning record as one HTML page that needs nothing else: plots as SVG, signature lines, cautions, page
 * numbers, a note for every number. It prints on A4 and on Letter.
 *
 * @param record from `recordOf` or `parseRecord`
 * @returns an HTML document; every text of the record is escaped
 * @example recordPage(record).startsWith('<!doctype html>') // true
 */
export function recordPage(record: CommissioningRecord): string {
  const { site, date, made, beams, deviations, notDone, remarks, cautions } = record;
  const notes = footnotes();
  const sections = beams.map(
    (beam) => html`<section class="beam">
<h2>Beam ${beam.id}</h2>
${settingsSection(beam, notes)}
${aimSection(beam.aim, notes)}
${coveredSection(beam.covered, site.timeZone, notes)}
${proofSection(beam.proof, beam.settings, site.timeZone, notes)}
</section>
`,
  );
  const page = html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>Commissioning record: ${site.name}${date && `, ${date}`}</title>
<style>${{ markup: recordStyle }}</style>
</head>
<body>
<header>
<h1>Commissioning record</h1>
<p class="lead">${site.name}. Work of ${date || missing('a day not written down')}; made ${wallTime(made, site.timeZone)} (${site.timeZone}); form ${record.format}.</p>
</header>
<main>
${list(remarks.map((remark) => html`<b>${remark}</b>`))}
${summarySection(record)}
${peopleSection(record)}
${findingsSection(record)}
<h2>Deviations and what was not done</h2>
<h3>Deviations</h3>${list(deviations, 'none written down')}
<h3>Not done</h3>${list(notDone, 'nothing written down')}
<div class="box plain"><h3>Cautions</h3>${list(cautions.map(({ words }) => words))}</div>
${sections}
<section class="beam">
<h2>Signatures</h2>
<p>Who signs has read the points and the gaps at the head of this record.</p>
<div class="sign">${signatures.map(
    (who) => html`<div>${who}: name, date, signature</div>
`,
  )}</div>
<h2>Where the numbers come from</h2>
<p>The local code, the maker's instructions and licensed practice come before every figure here.</p>
${notes.list()}
</section>
</main>
</body>
</html>
`;
  return page.markup;
}
