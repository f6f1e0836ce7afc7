import { useSignal } from '@preact/signals';
import type { Remote } from 'comlink';
import { useRef } from 'preact/hooks';
import type { Bench } from '../../bench/bench.js';
import type { Reading } from '../../bench/reading.js';
import { fileName } from '../../parts/fileName.js';
import { Scroll } from '../../parts/Scroll.js';
import { saveBlob } from '../../parts/saveText.js';
import { useDrop } from '../../parts/useDrop.js';
import { set } from '../../sheet/edits.js';
import type { Cell, Settings } from '../../sheet/sheet.js';
import { type Desk, deskOf } from '../../state/desk.js';
import { edit } from '../../state/store.js';
import { takeFiles } from '../../state/takeFiles.js';
import { siteDates } from '../../words/dates.js';
import { bytesInWords, counted, figure, lengthInWords } from '../../words/numbers.js';
import { SiteForm } from './SiteForm.js';
import { SiteText } from './SiteText.js';

/** Where a log comes in, and what it holds. */
export function LogCell({ cell }: { cell: Cell<'log'> }) {
  const desk = deskOf(cell.id);
  return (
    <>
      <DropZone cell={cell} />
      <Standing cell={cell} desk={desk} />
    </>
  );
}

/** Takes files by dropping or by the file dialogue. */
function DropZone({ cell }: { cell: Cell<'log'> }) {
  const said = useSignal<string | null>(null);
  const input = useRef<HTMLInputElement>(null);
  const take = async (files: readonly File[]): Promise<void> => {
    said.value = await takeFiles(cell, files);
  };
  const drop = useDrop((files) => void take(files));
  return (
    <div class={drop.over ? 'drop drop-over' : 'drop'} data-screen {...drop.listens}>
      <p>
        Drop a log here (CSV, gzipped or not, or XLSX; several files are one log) and its site file (JSON).
        <span class="quiet"> They stay on this machine: nothing is sent anywhere.</span>
      </p>
      <div class="buttons">
        <button type="button" onClick={() => input.current?.click()}>
          Choose files
        </button>
        <input
          ref={input}
          class="unseen"
          type="file"
          multiple
          tabIndex={-1}
          aria-label="Log files and site file"
          accept=".csv,.txt,.tsv,.log,.gz,.json,.xlsx"
          onChange={(event) => {
            const files = [...(event.currentTarget.files ?? [])];
            event.currentTarget.value = '';
            void take(files);
          }}
        />
        {cell.settings.log.from !== 'demo' && (
          <button
            type="button"
            onClick={() => edit((sheet) => set(sheet, cell, { log: { from: 'demo' }, site: null }))}
          >
            Open the demo
          </button>
        )}
      </div>
      {said.value && (
        <p class="trouble" role="alert">
          {said.value}
        </p>
      )}
    </div>
  );
}

/** How it stands with the log. */
function Standing({ cell, desk }: { cell: Cell<'log'>; desk: Desk }) {
  const state = desk.state.value;
  switch (state.is) {
    case 'nothing':
      return <p class="empty">No log yet. Drop one above, or open the demo to see what comes out.</p>;
    case 'reading':
      return <ReadingOn desk={desk} />;
    case 'stopped':
      return (
        <div class="trouble" role="alert">
          <p>Reading was stopped. Nothing of this log is shown.</p>
          <Again desk={desk} />
        </div>
      );
    case 'failed':
      return (
        <div class="trouble" role="alert">
          <p>
            {state.ours ? 'The notebook failed at this log; the fault is its own: ' : 'This log cannot be used: '}
            <span class="told">{state.message}</span>
          </p>
          <Again desk={desk} />
          {cell.settings.site && <SiteText cell={cell} site={cell.settings.site} open />}
        </div>
      );
    case 'lost':
      return (
        <p class="trouble" role="alert">
          This browser does not hold the log any more ({state.names.join(', ')}). Drop it again: settings and notes are
          as they were.
        </p>
      );
    case 'unsited':
      return <SiteForm cell={cell} files={state.files} />;
    case 'read':
      return <Held cell={cell} reading={state.reading} bench={state.bench} />;
  }
}

function Again({ desk }: { desk: Desk }) {
  return (
    <p data-screen>
      <button type="button" onClick={() => desk.again()}>
        Read it again
      </button>
    </p>
  );
}

/** Progress with a figure, and the way to stop it. */
function ReadingOn({ desk }: { desk: Desk }) {
  const state = desk.state.value;
  const progress = state.is === 'reading' ? state.progress : null;
  const share = progress && progress.total > 0 ? progress.done / progress.total : 0;
  const read = share >= 1;
  return (
    <div class="progress">
      <label>
        <span aria-live="polite">
          {read
            ? 'Read; now explaining …'
            : `Reading … ${Math.round(100 * share)} %${progress ? ` of ${bytesInWords(progress.total)}` : ''}`}
        </span>
        <progress max={1} value={share} />
      </label>
      <button type="button" onClick={() => desk.stop()}>
        Stop
      </button>
    </div>
  );
}

/** What the log holds, once it is read. */
function Held({ cell, reading, bench }: { cell: Cell<'log'>; reading: Reading; bench: Remote<Bench> }) {
  const { site, beams, input, names } = reading;
  const dates = siteDates(site.timeZone);
  const dropped = input.dropped > 0 ? `${counted(input.dropped)} lines could not be used` : 'every line was used';
  return (
    <>
      <p class="answer">
        {names.join(', ')} holds {counted(input.lines)} lines from {dates.stretch(reading.from, reading.to)} on the
        clock of {site.timeZone} ({lengthInWords(reading.to - reading.from)}); {dropped}. Read and explained in{' '}
        {figure(reading.seconds, 2)} s.
        {reading.reduced && reducedWords(reading.reduced)}
        {cell.settings.log.from === 'demo' && ' This depot and its log are invented, to show what the sheet can do.'}
      </p>
      <Scroll label="Beams of this log">
        <table class="beams">
          <thead>
            <tr>
              <th scope="col">beam</th>
              <th scope="col">path</th>
              <th scope="col">samples</th>
              <th scope="col">every</th>
              <th scope="col">level</th>
              <th scope="col">alarm, blocked at</th>
              <th scope="col">findings</th>
            </tr>
          </thead>
          <tbody>
            {beams.map((beam) => {
              const told = site.beams.find(({ id }) => id === beam.id);
              return (
                <tr key={beam.id}>
                  <th scope="row">{beam.id}</th>
                  <td>
                    {told &&
                      `${figure(told.separation)} m, ${told.layout === 'reflective' ? 'reflective' : 'end to end'}`}
                  </td>
                  <td>{counted(beam.samples)}</td>
                  <td>{Number.isFinite(beam.intervalSeconds) ? lengthInWords(beam.intervalSeconds * 1000) : ''}</td>
                  <td>
                    {Number.isFinite(beam.low)
                      ? `${figure(100 * beam.low)} to ${figure(100 * beam.high)} %`
                      : 'no sample'}
                  </td>
                  <td>{told && `${told.alarmThreshold} %, ${told.faultThreshold} %`}</td>
                  <td>{beam.findings.length}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </Scroll>
      <div class="buttons" data-screen>
        <button
          type="button"
          onClick={() =>
            void bench.reducedLog().then((table) => saveBlob(fileName([site.name, 'reduced log'], 'csv'), table))
          }
        >
          Save the reduced log
        </button>
      </div>
      <InputNotes reading={reading} />
      <SiteOf cell={cell} settings={cell.settings} />
    </>
  );
}

/** What a reduced log can no longer tell, in words. */
function reducedWords({ samples, kept }: { samples: number; kept: number }): string {
  const held =
    kept === samples
      ? 'every sample of it is here'
      : `${counted(kept)} of ${counted(samples)} samples stand as they were, the others as one row for each quiet minute (middle, least, greatest)`;
  return (
    ` The log in this sheet is reduced: ${held}. Findings, forecast and plots come from it as before` +
    `${kept === samples ? '' : '; one cannot look closer than its rows, and fire and fault are dated to within a minute there'}. ` +
    'To count alarms at other settings, or read it with another clean-air reading or column, drop the whole log here.'
  );
}

function InputNotes({ reading }: { reading: Reading }) {
  const { notes } = reading.input;
  if (notes.length === 0) return null;
  return (
    <details>
      <summary>
        {notes.length === 1 ? 'One thing' : `${counted(notes.length)} things`} mended or noted while reading
      </summary>
      <ul class="notes">
        {notes.map(({ file, line, lines, what }, row) => (
          <li key={`${row} ${line}`}>
            {file ? `${file}, ` : ''}line {counted(line)}
            {lines > 1 ? ` (${counted(lines)} lines)` : ''}: {what}
          </li>
        ))}
      </ul>
    </details>
  );
}

function SiteOf({ cell, settings }: { cell: Cell<'log'>; settings: Settings['log'] }) {
  if (!settings.site) return null;
  return <SiteText cell={cell} site={settings.site} />;
}
