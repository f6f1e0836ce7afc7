import { useSignal } from '@preact/signals';
import type { ExplanationJson } from 'beamkeep/moments';
import { Fragment } from 'preact';
import { useEffect } from 'preact/hooks';
import { Choice } from '../../parts/Choice.js';
import { set } from '../../sheet/edits.js';
import type { Cell } from '../../sheet/sheet.js';
import { edit } from '../../state/store.js';
import { siteDates, withDates } from '../../words/dates.js';
import { Partings } from '../findings/Partings.js';
import { NeedsLog } from '../NeedsLog.js';
import { showLane } from '../signal/laneName.js';
import { around } from '../signal/moveWindow.js';
import { type Answer, useAnswer } from '../useAnswer.js';
import { type OpenLog, wholeOf } from '../useLog.js';
import { fires } from './fires.js';
import { headline, inNames } from './headline.js';

type BeamThen = ExplanationJson['beams'][number];

/** Why then? A time of day, a moment, or the place last clicked in the plots. */
export function WhyCell({ cell }: { cell: Cell<'why'> }) {
  return <NeedsLog cell={cell.id}>{(log) => <Asked cell={cell} log={log} />}</NeedsLog>;
}

function Asked({ cell, log }: { cell: Cell<'why'>; log: OpenLog }) {
  const { bench, desk, reading } = log;
  const { at, beam } = cell.settings;
  const typed = useSignal(at);
  const clicked = desk.asked.value;
  // The last asked holds: a click in the plots after a typed time, and the typed time again once it is asked anew.
  const question = clicked === null ? at : new Date(clicked).toISOString();
  const answer = useAnswer(question ? () => bench.explain(question, beam) : null, [bench, question, beam]);
  useEffect(() => {
    typed.value = at;
  }, [at, typed]);
  // Its days are listed with the fire signals of those days.
  useEffect(() => {
    if (answer.is === 'told') desk.askSignalled();
  }, [answer, desk]);
  const ids = reading.beams.map(({ id }) => id);
  return (
    <>
      <form
        class="settings"
        onSubmit={(event) => {
          event.preventDefault();
          desk.asked.value = null;
          edit((sheet) => set(sheet, cell, { at: typed.value.trim() }));
        }}
      >
        <label class="field">
          <span>A time: “Tue 06:40”, “06:40”, “2027-03-16 06:40”</span>
          <input
            value={typed.value}
            onInput={(event) => {
              typed.value = event.currentTarget.value;
            }}
          />
        </label>
        <button type="submit">Ask</button>
        <Choice
          legend="Beam"
          options={[['', 'all'], ...ids.map((id) => [id, id] as const)]}
          value={beam ?? ''}
          onChange={(id) => edit((sheet) => set(sheet, cell, { beam: id || null }))}
        />
      </form>
      <div aria-live="polite">
        <Answered
          log={log}
          answer={answer}
          asked={clicked === null ? at : siteDates(reading.site.timeZone).moment(clicked)}
        />
      </div>
    </>
  );
}

function Answered({ log, answer, asked }: { log: OpenLog; answer: Answer<ExplanationJson>; asked: string }) {
  switch (answer.is) {
    case 'nothing':
      return <p class="empty">Type a time, or click a place in the plots above.</p>;
    case 'asking':
      return <p class="empty">Looking at {asked} …</p>;
    case 'refused':
      return <p class="trouble">{answer.why}</p>;
    case 'told':
      return <Told log={log} explanation={answer.told} asked={asked} />;
  }
}

interface ToldProps {
  readonly log: OpenLog;
  readonly explanation: ExplanationJson;
  readonly asked: string;
}

function Told({ log, explanation: { beams, beforeTests, asked: understood }, asked }: ToldProps) {
  const loud = beams.filter(({ quiet }) => !quiet);
  const quiet = beams.filter((beam) => beam.quiet);
  return (
    <>
      <p class="answer">
        Asked about <b>{asked}</b>.{loud.length === 0 && ' Nothing stands out on any beam then.'}
        {loud.length > 0 && quiet.length > 0 && ` Nothing stands out on ${quiet.map(({ id }) => id).join(', ')}.`}
      </p>
      {(loud.length > 0 ? loud : quiet).map((beam) => (
        <Then key={beam.id} log={log} beam={beam} many={understood.instant === null} />
      ))}
      {loud.length > 0 && <p class="key">{beforeTests}</p>}
    </>
  );
}

function Then({ log, beam, many }: { log: OpenLog; beam: BeamThen; many: boolean }) {
  const { words, causes, action, settles, cautions, runnerUp, quiet } = beam;
  return (
    <article class="then">
      <h3>Beam {beam.id}</h3>
      {!quiet && causes.length > 0 && (
        <ul class="short-answer">
          {headline(causes, many).map(({ cause, rest }) => (
            <li key={cause}>
              <b>{cause}</b>
              {rest.startsWith(':') ? rest : ` ${rest}`}
            </li>
          ))}
        </ul>
      )}
      {!quiet && <Places log={log} beam={beam} />}
      <p class="answer">{words.recurs}</p>
      <p class="answer">{withDates(words.signal)}</p>
      {!quiet && (
        <>
          <ul>
            {words.causes.map((cause) => (
              <li key={cause}>{withDates(inNames(cause, causes))}</li>
            ))}
          </ul>
          <dl class="advice">
            {action && (
              <>
                <dt>Do</dt>
                <dd>{inNames(action, causes)}</dd>
              </>
            )}
            {settles && (
              <>
                <dt>Settles it</dt>
                <dd>{settles}</dd>
              </>
            )}
            {cautions.length > 0 && (
              <>
                <dt>Mind</dt>
                <dd>{cautions.join(' ')}</dd>
              </>
            )}
          </dl>
          {runnerUp && <Partings runnerUp={runnerUp} />}
        </>
      )}
    </article>
  );
}

/** Ways to the plot: the stretch told about, and every fire signal of the days that show it. */
function Places({ log: { desk, reading }, beam }: { log: OpenLog; beam: BeamThen }) {
  const dates = siteDates(reading.site.timeZone);
  const told = beam.signal;
  const times = told ? [told, ...beam.recurs.times] : beam.recurs.times;
  const stretches = times.map(({ start, end }) => ({ start: Date.parse(start), end: Date.parse(end) }));
  const alarms = fires(desk.signalled.value, beam.id, stretches);
  const go = (stretch: { start: number; end: number }): void => {
    desk.window.value = around(stretch, wholeOf(reading));
    showLane(desk, beam.id);
  };
  return (
    <p class="places" data-screen>
      {told && (
        <button type="button" onClick={() => go({ start: Date.parse(told.start), end: Date.parse(told.end) })}>
          Show on the plot
        </button>
      )}
      {alarms.length > 0 && (
        <span>
          Fire by these settings:{' '}
          {alarms.map(({ start }, row) => (
            <Fragment key={start}>
              {row > 0 && (row === alarms.length - 1 ? ' and ' : ', ')}
              <button
                type="button"
                class="plain"
                onClick={() =>
                  go(stretches.find((one) => start >= one.start && start <= one.end) ?? { start, end: start })
                }
              >
                {dates.moment(start)}
              </button>
            </Fragment>
          ))}
          .
        </span>
      )}
    </p>
  );
}
