import { type BeamStanding, comparedBeam } from 'beamkeep/diagnosis';
import { useCallback, useMemo } from 'preact/hooks';
import { Asked } from '../../parts/Asked.js';
import { Choice } from '../../parts/Choice.js';
import { numberIn } from '../../parts/numberIn.js';
import { Scroll } from '../../parts/Scroll.js';
import { compareFigure, compareHeight } from '../../plots/compareFigure.js';
import { Plot } from '../../plots/Plot.js';
import type { Palette } from '../../plots/palette.js';
import { set } from '../../sheet/edits.js';
import type { Cell, Settings } from '../../sheet/sheet.js';
import { deskOf } from '../../state/desk.js';
import { edit, sheet } from '../../state/store.js';
import { causeHeading } from '../../words/causes.js';
import { siteDates } from '../../words/dates.js';
import { figure } from '../../words/numbers.js';
import { useAnswer } from '../useAnswer.js';
import type { OpenLog } from '../useLog.js';
import { changeInWords, compareSentences, fateInWords, unmatched } from './compareWords.js';

/** Every day after is set against every day before: more days than these would keep the page. */
const mostDays = 120;

/** What did a visit change: two logs of one site, before and after. */
export function CompareCell({ cell }: { cell: Cell<'compare'> }) {
  const { settings } = cell;
  const change = (to: Partial<Settings['compare']>): void =>
    edit((now) => set(now, cell, to), `${cell.id} ${Object.keys(to).join()}`);
  const logs = sheet.value.cells.flatMap((one, row) => (one.kind === 'log' ? [{ id: one.id, row }] : []));
  const here = sheet.value.cells.findIndex(({ id }) => id === cell.id);
  const above = logs.filter(({ row }) => row < here);
  const before = logs.find(({ id }) => id === settings.before) ?? above.at(-2);
  const after = logs.find(({ id }) => id === settings.after) ?? above.at(-1);
  const days = Math.min(mostDays, Math.round(numberIn(settings.days)));
  if (!before || !after)
    return (
      <p class="empty">
        This cell compares two logs, and there are not two above it. Add a second log cell above and drop the log from
        after the visit on it; the nearest log is taken as after, the one above it as before.
      </p>
    );
  const named = (id: string, row: number): string => {
    const state = deskOf(id).state.value;
    return `cell ${row + 1}${state.is === 'read' ? `: ${state.reading.names.join(', ')}` : ''}`;
  };
  const choice = (key: 'before' | 'after', words: string, value: string) => (
    <label class="field">
      <span>{words}</span>
      <select value={value} onChange={(event) => change({ [key]: event.currentTarget.value })}>
        {logs.map(({ id, row }) => (
          <option key={id} value={id}>
            {named(id, row)}
          </option>
        ))}
      </select>
    </label>
  );
  return (
    <>
      <div class="settings">
        {choice('before', 'Log before', before.id)}
        {choice('after', 'Log after', after.id)}
        <label class="field">
          <span>Days of either, at most (1 to {mostDays})</span>
          <input
            inputMode="numeric"
            size={6}
            value={settings.days}
            onInput={(event) => change({ days: event.currentTarget.value })}
          />
        </label>
      </div>
      <Asked
        of={[
          ['Log before', named(before.id, before.row)],
          ['log after', named(after.id, after.row)],
          ['days of either, at most', settings.days],
        ]}
      />
      {before.id === after.id && <p class="trouble">Both are the same log: choose another one.</p>}
      {!(days >= 1) && (
        <p class="trouble">
          Days {settings.days || '(none)'}: give a whole number from 1 to {mostDays}.
        </p>
      )}
      {before.id !== after.id && days >= 1 && (
        <Both before={before.id} after={after.id} days={days} cell={cell} change={change} />
      )}
    </>
  );
}

interface BothProps {
  readonly before: string;
  readonly after: string;
  readonly days: number;
  readonly cell: Cell<'compare'>;
  readonly change: (to: Partial<Settings['compare']>) => void;
}

/** An open log behind a cell; undefined while it is not read. */
function openLog(id: string): OpenLog | undefined {
  const desk = deskOf(id);
  const state = desk.state.value;
  return state.is === 'read' ? { desk, reading: state.reading, bench: state.bench } : undefined;
}

function Both({ before, after, days, cell, change }: BothProps) {
  const [early, late] = [openLog(before), openLog(after)];
  const answer = useAnswer(
    early && late
      ? () => Promise.all([early.bench.standings({ at: 'end', days }), late.bench.standings({ at: 'begin', days })])
      : null,
    [early?.reading, late?.reading, days],
  );
  if (!early || !late) return <p class="empty">Waits for both logs to be read.</p>;
  switch (answer.is) {
    case 'told':
      return <Compared logs={[early, late]} standings={answer.told} cell={cell} change={change} />;
    case 'refused':
      return <p class="trouble">{answer.why}</p>;
    default:
      return <p class="empty">Comparing day by day …</p>;
  }
}

interface ComparedProps {
  readonly logs: readonly [before: OpenLog, after: OpenLog];
  readonly standings: readonly [before: readonly BeamStanding[], after: readonly BeamStanding[]];
  readonly cell: Cell<'compare'>;
  readonly change: (to: Partial<Settings['compare']>) => void;
}

function Compared({ logs: [early, late], standings: [before, after], cell, change }: ComparedProps) {
  const pairs = useMemo(
    () =>
      after.flatMap((one) => {
        const other = before.find(({ id }) => id === one.id);
        return other ? [{ before: other, after: one, compared: comparedBeam(other, one) }] : [];
      }),
    [before, after],
  );
  const shown = pairs.find(({ after: { id } }) => id === cell.settings.beam) ?? pairs[0];
  const draw = useCallback(
    (width: number, colours: Palette) =>
      shown ? compareFigure(shown.before, shown.after, width, colours) : { data: [], layout: {} },
    [before, after, shown?.after.id],
  );
  const left = unmatched(before, after);
  if (!shown)
    return (
      <p class="trouble">
        The two logs have no beam of the same name. {left.join(' ')} Name them alike in the site files.
      </p>
    );
  const sentences = compareSentences(shown.compared);
  const zone = late.reading.site.timeZone;
  const overlap = early.reading.to > late.reading.from;
  return (
    <>
      <div class="settings">
        <Choice
          legend="Beam"
          options={pairs.map(({ after: { id } }) => [id, id] as const)}
          value={shown.after.id}
          onChange={(id) => change({ beam: id })}
        />
      </div>
      {overlap && (
        <p class="trouble">
          The log before ends on {siteDates(zone).date(early.reading.to)}, after the other begins on{' '}
          {siteDates(zone).date(late.reading.from)}: are they the right way round?
        </p>
      )}
      <div class="said" aria-live="polite">
        {sentences.map((words) => (
          <p class="answer" key={words}>
            {words}
          </p>
        ))}
      </div>
      {shown.compared.daysBefore + shown.compared.daysAfter > 0 && (
        <Plot
          figure={draw}
          height={compareHeight}
          name={[late.reading.site.name, 'before and after', shown.after.id]}
          label={`Beam ${shown.after.id}, daily low and median of each day before and after, in decibels. ${sentences[0]} The same as numbers: in the tables below.`}
        />
      )}
      <p class="key">
        Each day after is set against each day before: the change is the middle of these differences, and four in five
        of them lie in its band; it is clear when the band leaves zero out. Events that pass are left out of the levels;
        where the level stepped, the days since the last step before the visit count, and those until the first step
        after it. Other weather and other seasons change a beam too: the nearer the two stretches, the better.
        {left.length > 0 && ` ${left.join(' ')}`}
      </p>
      <BeamsTable pairs={pairs} />
      <CausesTable pairs={pairs} />
      <DaysTable before={shown.before} after={shown.after} zone={zone} />
    </>
  );
}

interface Pair {
  readonly before: BeamStanding;
  readonly after: BeamStanding;
  readonly compared: ReturnType<typeof comparedBeam>;
}

/** Every beam's changes. */
function BeamsTable({ pairs }: { pairs: readonly Pair[] }) {
  return (
    <Scroll label="Changes of every beam">
      <table>
        <caption>From before to after: change (band of four pairs of days in five)</caption>
        <thead>
          <tr>
            <th scope="col">beam</th>
            <th scope="col">days</th>
            <th scope="col">loss on a usual day</th>
            <th scope="col">left at the daily low</th>
            <th scope="col">daily swing</th>
            <th scope="col">spread of samples</th>
          </tr>
        </thead>
        <tbody>
          {pairs.map(({ compared: { id, daysBefore, daysAfter, loss, margin, swing, noise } }) => (
            <tr key={id}>
              <th scope="row">{id}</th>
              <td>
                {daysBefore}, {daysAfter}
              </td>
              <td class="cost">{changeInWords(loss, 'dB')}</td>
              <td class="cost">{changeInWords(margin, 'dB')}</td>
              <td class="cost">{changeInWords(swing, 'dB')}</td>
              <td>
                {Number.isNaN(noise.ratio)
                  ? 'not to be told'
                  : `${figure(noise.before, 2)} to ${figure(noise.after, 2)} %`}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}

/** What was found before and after. */
function CausesTable({ pairs }: { pairs: readonly Pair[] }) {
  const rows = pairs.flatMap(({ compared: { id, findings } }) => findings.map((one) => ({ id, ...one })));
  if (rows.length === 0) return <p class="empty">Nothing was found in the days that are compared.</p>;
  return (
    <Scroll label="Findings before and after">
      <table>
        <caption>How often each cause was found in the days that are compared</caption>
        <thead>
          <tr>
            <th scope="col">beam</th>
            <th scope="col">cause</th>
            <th scope="col">before</th>
            <th scope="col">after</th>
            <th scope="col">what became of it</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ id, cause, before, after, fate }) => (
            <tr key={`${id} ${cause}`}>
              <th scope="row">{id}</th>
              <td>{causeHeading(cause)}</td>
              <td>{before?.times ?? 0}</td>
              <td>{after?.times ?? 0}</td>
              <td>{fateInWords[fate]}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}

/** The days behind the plot, as numbers. */
function DaysTable({ before, after, zone }: { before: BeamStanding; after: BeamStanding; zone: string }) {
  const dates = siteDates(zone);
  const rows = [before, after].flatMap(({ byDay: { start, loss, low, swing } }, side) =>
    start.map((instant, i) => ({
      side: side === 0 ? 'before' : 'after',
      instant,
      values: [loss[i], low[i], swing[i]].map((value) => value ?? Number.NaN),
    })),
  );
  return (
    <details class="table">
      <summary>Each day as a table</summary>
      <Scroll label="Each day" tall>
        <table>
          <caption>Beam {after.id}, each day that is compared [dB]</caption>
          <thead>
            <tr>
              <th scope="col">day</th>
              <th scope="col">side</th>
              <th scope="col">median loss</th>
              <th scope="col">daily low</th>
              <th scope="col">swing</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ side, instant, values }) => (
              <tr key={`${side} ${instant}`}>
                <th scope="row">{dates.date(instant)}</th>
                <td>{side}</td>
                {values.map((value, column) => (
                  <td key={['loss', 'low', 'swing'][column]}>{figure(value)}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
    </details>
  );
}
