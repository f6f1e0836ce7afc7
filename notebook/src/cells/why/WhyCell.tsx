import { useSignal } from '@preact/signals';
import type { ExplanationJson } from 'beamkeep/moments';
import { useEffect, useState } from 'preact/hooks';
import { Choice } from '../../parts/Choice.js';
import { set } from '../../sheet/edits.js';
import type { Cell } from '../../sheet/sheet.js';
import { edit } from '../../state/store.js';
import { causeHeading } from '../../words/causes.js';
import { siteDates } from '../../words/dates.js';
import { Partings } from '../findings/Partings.js';
import { NeedsLog } from '../NeedsLog.js';
import type { OpenLog } from '../useLog.js';

type BeamThen = ExplanationJson['beams'][number];
type Answer =
  | { readonly is: 'nothing' }
  | { readonly is: 'asking' }
  | { readonly is: 'told'; readonly explanation: ExplanationJson }
  | { readonly is: 'refused'; readonly why: string };

/** Why then? A time of day, a moment, or the place last clicked in the plots. */
export function WhyCell({ cell }: { cell: Cell<'why'> }) {
  return <NeedsLog cell={cell.id}>{(log) => <Asked cell={cell} log={log} />}</NeedsLog>;
}

function Asked({ cell, log }: { cell: Cell<'why'>; log: OpenLog }) {
  const { bench, desk, reading } = log;
  const { at, beam } = cell.settings;
  const typed = useSignal(at);
  const clicked = desk.asked.value;
  const question = at || (clicked === null ? '' : new Date(clicked).toISOString());
  const [answer, setAnswer] = useState<Answer>({ is: 'nothing' });
  useEffect(() => {
    typed.value = at;
  }, [at, typed]);
  useEffect(() => {
    let outdated = false;
    if (!question) {
      setAnswer({ is: 'nothing' });
      return;
    }
    setAnswer({ is: 'asking' });
    void bench.explain(question, beam).then(
      (explanation) => !outdated && setAnswer({ is: 'told', explanation }),
      (error: unknown) => !outdated && setAnswer({ is: 'refused', why: (error as Error).message }),
    );
    return () => {
      outdated = true;
    };
  }, [bench, question, beam]);
  const ids = reading.beams.map(({ id }) => id);
  return (
    <>
      <form
        class="settings"
        onSubmit={(event) => {
          event.preventDefault();
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
          answer={answer}
          asked={at ? at : clicked === null ? '' : siteDates(reading.site.timeZone).moment(clicked)}
        />
      </div>
    </>
  );
}

function Answered({ answer, asked }: { answer: Answer; asked: string }) {
  switch (answer.is) {
    case 'nothing':
      return <p class="empty">Type a time, or click a place in the plots above.</p>;
    case 'asking':
      return <p class="empty">Looking at {asked} …</p>;
    case 'refused':
      return <p class="trouble">{answer.why}</p>;
    case 'told':
      return <Told explanation={answer.explanation} asked={asked} />;
  }
}

function Told({ explanation: { beams, beforeTests }, asked }: { explanation: ExplanationJson; asked: string }) {
  const loud = beams.filter(({ quiet }) => !quiet);
  const quiet = beams.filter((beam) => beam.quiet);
  return (
    <>
      <p class="answer">
        Asked about <b>{asked}</b>.{loud.length === 0 && ' Nothing stands out on any beam then.'}
        {loud.length > 0 && quiet.length > 0 && ` Nothing stands out on ${quiet.map(({ id }) => id).join(', ')}.`}
      </p>
      {(loud.length > 0 ? loud : quiet).map((beam) => (
        <Then key={beam.id} beam={beam} />
      ))}
      {loud.length > 0 && <p class="key">{beforeTests}</p>}
    </>
  );
}

function Then({ beam }: { beam: BeamThen }) {
  const { words, causes, action, settles, cautions, runnerUp, quiet } = beam;
  return (
    <article class="then">
      <h3>
        Beam {beam.id}
        {!quiet && causes.length > 0 && (
          <span class="healthy">{causes.map(({ cause }) => causeHeading(cause).toLowerCase()).join('; ')}</span>
        )}
      </h3>
      <p class="answer">{words.recurs}</p>
      <p class="answer">{words.signal}</p>
      {!quiet && (
        <>
          <ul>
            {words.causes.map((cause) => (
              <li key={cause}>{cause}</li>
            ))}
          </ul>
          <dl class="advice">
            {action && (
              <>
                <dt>Do</dt>
                <dd>{action}</dd>
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
