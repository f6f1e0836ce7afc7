import type { EventTold } from '../../bench/reading.js';
import { Scroll } from '../../parts/Scroll.js';
import type { Cell } from '../../sheet/sheet.js';
import { causeOnBar, withHeadings } from '../../words/causes.js';
import { type SiteDates, siteDates } from '../../words/dates.js';
import { counted } from '../../words/numbers.js';
import { NeedsLog } from '../NeedsLog.js';
import { showLane } from '../signal/laneName.js';
import { around } from '../signal/moveWindow.js';
import { type OpenLog, wholeOf } from '../useLog.js';
import { type EventRun, eventRuns } from './eventRuns.js';

/** What the panel signalled, each entry beside what the log shows then. */
export function EventsCell({ cell }: { cell: Cell<'events'> }) {
  return <NeedsLog cell={cell.id}>{(log) => <Joined log={log} />}</NeedsLog>;
}

function Joined({ log }: { log: OpenLog }) {
  const { desk, reading } = log;
  const { events, clock } = reading;
  if (clock === null)
    return (
      <p class="empty">
        Drop the panel’s list on the log cell above: a CSV with the columns time, beam and what. Each entry then stands
        beside what the log shows at that time.
      </p>
    );
  const dates = siteDates(reading.site.timeZone);
  const go = ({ at, beam }: EventTold): void => {
    desk.window.value = around({ start: at, end: at + 1_800_000 }, wholeOf(reading));
    desk.asked.value = at;
    showLane(desk, beam);
  };
  return (
    <>
      <p class="answer">
        {counted(events.length)} entries, on the log’s clock. {clock}
      </p>
      <Scroll label="Entries of the panel's list" tall>
        <table class="events">
          <thead>
            <tr>
              <th scope="col">time</th>
              <th scope="col">beam</th>
              <th scope="col">panel</th>
              <th scope="col">finding</th>
              <th scope="col">what the log shows</th>
            </tr>
          </thead>
          <tbody>
            {eventRuns(events).map((run, row) => [
              run.events.length > 1 && <OnPaper key={`${row} on paper`} run={run} dates={dates} />,
              ...run.events.map((event, of) => (
                <tr key={`${row} ${of} ${event.at}`} {...(run.events.length > 1 && { 'data-screen': true })}>
                  <th scope="row">
                    <button type="button" class="plain" onClick={() => go(event)}>
                      {dates.moment(event.at)}
                    </button>
                  </th>
                  <td>{event.beam ?? 'all'}</td>
                  <td>{event.what}</td>
                  <td>
                    <FindingOf event={event} />
                  </td>
                  <td class="words">{withHeadings(event.words)}</td>
                </tr>
              )),
            ])}
          </tbody>
        </table>
      </Scroll>
    </>
  );
}

/** Entries that say the same, as one row: paper has no room for each, but for the time of each. */
function OnPaper({ run: { events, words }, dates }: { run: EventRun; dates: SiteDates }) {
  const [first] = events;
  return (
    <tr class="on-paper">
      <th scope="row">{dates.stretch(first.at, (events.at(-1) ?? first).at)}</th>
      <td>{first.beam ?? 'all'}</td>
      <td>
        {first.what}, {counted(events.length)} times
      </td>
      <td>
        <FindingOf event={first} />
      </td>
      <td class="words">
        {withHeadings(words)}{' '}
        <span class="quiet">
          All times: {events.map(({ at }) => dates.moment(at).replaceAll(' ', '\u00a0')).join('; ')}.
        </span>
      </td>
    </tr>
  );
}

function FindingOf({ event: { finding } }: { event: EventTold }) {
  return (
    finding && (
      <a href={`#finding-${finding.number}`}>
        {finding.number} {causeOnBar(finding.cause)}
      </a>
    )
  );
}
