import type { Reading } from '../../bench/reading.js';
import { SeverityWord } from '../../parts/Severity.js';
import { logAbove } from '../../sheet/edits.js';
import type { Desk } from '../../state/desk.js';
import { sheet } from '../../state/store.js';
import { causeHeading } from '../../words/causes.js';
import { siteDates } from '../../words/dates.js';
import { typeset } from '../../words/typeset.js';
import { inOrder } from './moveWindow.js';

/** The chosen finding in one line, with the way to its place in the list. */
export function ChosenFinding({ desk, reading }: { desk: Desk; reading: Reading }) {
  const finding = inOrder(reading).find(({ number }) => number === desk.chosen.value);
  const asked = desk.asked.value;
  const why = sheet.value.cells.find(({ id, kind }) => kind === 'why' && logAbove(sheet.value, id)?.id === desk.cell);
  return (
    <div class="chosen" aria-live="polite">
      {finding && (
        <p>
          <b>{finding.number}</b> <SeverityWord severity={finding.severity} />{' '}
          <b>
            {finding.beam}: {causeHeading(finding.cause)}.
          </b>{' '}
          {typeset(finding.summary)} <a href={`#finding-${finding.number}`}>Read on</a>{' '}
          <button type="button" class="plain" data-screen onClick={() => (desk.chosen.value = null)}>
            let go
          </button>
        </p>
      )}
      {asked !== null && why && (
        <p>
          {siteDates(reading.site.timeZone).moment(asked)}: <a href={`#cell-${why.id}`}>why then?</a>
        </p>
      )}
    </div>
  );
}
