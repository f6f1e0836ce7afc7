import type { NumberedFinding } from '../../bench/reading.js';
import { SeverityWord } from '../../parts/Severity.js';
import type { Cell } from '../../sheet/sheet.js';
import { causeHeading } from '../../words/causes.js';
import { confidenceInWords } from '../../words/confidence.js';
import { siteDates } from '../../words/dates.js';
import { lengthInWords, measured, percent } from '../../words/numbers.js';
import { typeset } from '../../words/typeset.js';
import { showLane } from '../signal/laneName.js';
import { goTo } from '../signal/moveWindow.js';
import type { OpenLog } from '../useLog.js';
import { Inset } from './Inset.js';
import { Partings } from './Partings.js';
import { VerdictForm } from './VerdictForm.js';

interface FindingSheetProps {
  readonly cell: Cell<'findings'>;
  readonly log: OpenLog;
  readonly finding: NumberedFinding;
}

/** One finding: what, when, how sure, on what evidence, what to do, and what would settle it. */
export function FindingSheet({ cell, log, finding }: FindingSheetProps) {
  const { desk, reading } = log;
  const dates = siteDates(reading.site.timeZone);
  const chosen = desk.chosen.value === finding.number;
  const times = finding.episodes?.length ?? 0;
  return (
    <article
      id={`finding-${finding.number}`}
      class={chosen ? 'finding finding-chosen' : 'finding'}
      aria-labelledby={`finding-${finding.number}-name`}
    >
      <header>
        <span class="finding-number">{finding.number}</span>
        <SeverityWord severity={finding.severity} />
        <h4 id={`finding-${finding.number}-name`}>{causeHeading(finding.cause)}</h4>
        <span class="confidence">
          {confidenceInWords(finding)}, {percent(finding.confidence)}
        </span>
      </header>
      <div class="finding-body">
        <div class="finding-words">
          <p class="when">
            {dates.stretch(finding.start, finding.end)}
            {finding.end > finding.start && ` · ${lengthInWords(finding.end - finding.start)}`}
            {times > 1 && ` · came ${times} times`}
            {finding.ongoing && ' · still so at the end of the log'}
            {finding.during && ` · during a visit: ${finding.during}`}
          </p>
          <p class="summary">{typeset(finding.summary)}</p>
          <dl class="advice">
            <dt>Do</dt>
            <dd>{typeset(finding.action)}</dd>
            <dt>Settles it</dt>
            <dd>{typeset(finding.settles)}</dd>
          </dl>
        </div>
        <div class="finding-proof">
          <Inset log={log} finding={finding} />
        </div>
      </div>
      {finding.evidence.length > 0 && (
        <dl class="evidence" aria-label={`Evidence for finding ${finding.number}`}>
          {finding.evidence.map((one, row) => {
            const [value, unit] = measured(one.value, one.unit);
            return (
              <div key={`${row} ${one.measure}`}>
                <dt>{typeset(one.measure)}</dt>
                <dd>
                  {value} <span class="unit">{unit}</span>
                </dd>
              </div>
            );
          })}
        </dl>
      )}
      {finding.runnerUp && <Partings runnerUp={finding.runnerUp} />}
      <div class="finding-foot">
        <button
          type="button"
          data-screen
          onClick={() => {
            goTo(finding, desk, reading);
            showLane(desk, finding.beam);
          }}
        >
          Show on the plot
        </button>
        <VerdictForm cell={cell} finding={finding} />
      </div>
    </article>
  );
}
