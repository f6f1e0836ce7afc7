import type { Site } from 'beamkeep/site';
import type { RecordTold } from '../../bench/recordTold.js';
import { saveText } from '../../parts/saveText.js';
import { logAbove } from '../../sheet/edits.js';
import type { Cell, VerdictOnFinding } from '../../sheet/sheet.js';
import { type NumberedWork, workAbove } from '../../sheet/workAbove.js';
import { helper } from '../../state/helper.js';
import { sheet } from '../../state/store.js';
import { counted } from '../../words/numbers.js';
import { NeedsSite } from '../NeedsSite.js';
import { useAnswer } from '../useAnswer.js';
import { useKept } from '../useKept.js';
import { useLog } from '../useLog.js';
import { DemoDay } from './DemoDay.js';
import { dayOf } from './dayOf.js';
import { findingsOut } from './findingsOut.js';
import { RecordForm } from './RecordForm.js';
import { RecordFrame } from './RecordFrame.js';
import { RecordFront } from './RecordFront.js';
import { workOf } from './workOf.js';

/** How long nobody types before the record is gathered anew [ms]. */
const pause = 400;

/** What is handed over? */
export function RecordCell({ cell }: { cell: Cell<'record'> }) {
  return <NeedsSite cell={cell.id}>{(site) => <Record cell={cell} site={site} />}</NeedsSite>;
}

function Record({ cell, site }: { cell: Cell<'record'>; site: Site }) {
  const { settings } = cell;
  const { state } = useLog(cell.id);
  const reading = state.is === 'read' ? state.reading : null;
  const work = workAbove(sheet.value, cell.id);
  const ask = (): Promise<RecordTold> =>
    helper().record(
      {
        day: dayOf(settings),
        work: workOf(work, site),
        findings: reading && findingsOut(reading, verdictsOf(work)),
        log: reading && {
          from: new Date(reading.from).toISOString(),
          to: new Date(reading.to).toISOString(),
          lines: reading.input.lines,
          dropped: reading.input.dropped,
        },
        made: Date.now(),
      },
      site,
    );
  const on = [site, reading, settings, ...work.flatMap(({ number, cell: { settings: of } }) => [number, of])];
  const record = useKept(useAnswer(ask, on, pause));
  const demo = logAbove(sheet.value, cell.id)?.settings.log.from === 'demo';
  return (
    <>
      {demo && work.every(({ cell: { kind } }) => kind === 'findings') && <DemoDay cell={cell} />}
      <RecordForm cell={cell} timeZone={site.timeZone} />
      {record.is === 'asking' && <p class="empty">Gathering the record …</p>}
      {record.is === 'refused' && <p class="trouble">{record.why}</p>}
      {record.is === 'told' && <Told record={record.told} site={site} work={workOf(work, site).length} />}
    </>
  );
}

/** What people said to the findings in the cells above; the lower cell has the last word. */
const verdictsOf = (work: readonly NumberedWork[]): Readonly<Record<string, VerdictOnFinding>> =>
  Object.assign(
    Object.create(null),
    ...work.flatMap(({ cell }) => (cell.kind === 'findings' ? [cell.settings.verdicts] : [])),
  );

function Told({
  record: { attention, missing, json, page },
  site,
  work,
}: {
  record: RecordTold;
  site: Site;
  work: number;
}) {
  return (
    <>
      <p class="answer" aria-live="polite">
        The record of {site.name} gathers {counted(work)} {work === 1 ? 'test' : 'tests'} from the cells above, the
        settings of the site, the findings with what was said to them, and what is written here. To look at before the
        hand-over: {counted(attention)}. Missing: {counted(missing)}.
      </p>
      <RecordFront page={page} />
      <RecordFrame page={page} name={site.name}>
        <button type="button" onClick={() => saveText('record.html', 'text/html', page)}>
          Save as a page
        </button>
        <button type="button" onClick={() => saveText('record.json', 'application/json', json)}>
          Save as JSON
        </button>
      </RecordFrame>
    </>
  );
}
